import type { Result, UnitKind } from '../analysis/analysis.ts';
import type { SurvivalLine } from '../analysis/survival-line.ts';

/** Units of one treatment at the tests after the start of storage (all of them, where there was no test at the start). */
export function jarsOpened(
  { groups }: Result,
  { lot, treatment }: SurvivalLine,
): { kind: UnitKind; count: number; tests: number } {
  const own = groups.filter((group) => group.lot === lot && group.treatment === treatment && group.units > 0);
  const later = own.filter(({ stored }) => stored !== 0);
  const kinds = later.map(({ unit }) => unit);
  return {
    kind: kinds.includes('batch') ? 'batch' : (kinds[0] ?? 'sowing'),
    count: later.reduce((sum, { units }) => sum + units, 0),
    tests: later.length,
  };
}
