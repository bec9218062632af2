import type { Check as Newly } from '../../statistics/times/checks.ts';
import type { Check } from '../units/unit.ts';

/** Totals turned into seeds newly germinated since the check before. Day 0 counts 0 (methods 5). */
export function newlyGerminated(checks: readonly Check[]): readonly Newly[] {
  const later = checks.filter(({ day }) => day > 0);
  return later.map(({ day, total }, index) => ({ day, newly: total - (later[index - 1]?.total ?? 0) }));
}
