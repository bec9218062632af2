import type { Check } from './unit.ts';
import type { Checked } from './day-of-lot.ts';

/**
 * Counts of several sowings added up, for the days on which all of them are known: checked, or all
 * seeds germinated before. Other days are passed over, never guessed.
 */
export function mergedChecks(sowings: readonly Checked[]): readonly Check[] {
  const days = [...new Set(sowings.flatMap(({ checks }) => checks.map(({ day }) => day)))].sort((a, b) => a - b);
  return days.flatMap((day) => {
    const totals = sowings.map((sowing) => totalOn(sowing, day));
    if (totals.some((total) => total === null)) return [];
    return [{ day, total: totals.reduce<number>((sum, total) => sum + (total ?? 0), 0) }];
  });
}

function totalOn({ seeds, checks }: Checked, day: number): number | null {
  const last = checks.findLast((check) => check.day <= day);
  return last !== undefined && (last.day === day || last.total === seeds) ? last.total : null;
}
