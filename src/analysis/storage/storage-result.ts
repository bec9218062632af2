import type { Outcome, Trial } from '../../trial/trial.ts';
import { holm } from '../../statistics/holm.ts';
import type { Result } from '../analysis.ts';
import type { LineComparison } from '../survival-line.ts';
import { lotDispersion } from '../comparisons/lot-dispersion.ts';
import { germinationGroup } from '../groups/germination-group.ts';
import { unitValues } from '../groups/unit-values.ts';
import { distinctGroups } from '../units/distinct-groups.ts';
import { lineComparisons } from './line-comparisons.ts';
import { storageUnits, type StorageUnits } from './storage-units.ts';
import { survivalLine } from './survival-line.ts';

/**
 * A storage series (methods 9): what came up at each time, the survival line of each treatment, and the lines
 * compared. Treatments at one time are compared by an outcome of germination, not here.
 *
 * @param trial its rows in one order (sortedTrial)
 */
export function storageResult(trial: Trial, outcome: Outcome): Result {
  const lots = trial.lots.map(({ id }) => storageUnits(trial, outcome, id)).filter(({ groups }) => groups.length > 0);
  const days = lots.flatMap(({ lot, day }) => (day === null ? [] : [[lot, day] as const]));
  const distinct = new Set(days.map(([, day]) => day));
  const storage = new Map(lots.map((units) => [units.lot, linesOf(units)]));
  return {
    outcome: outcome.id,
    measure: 'storage',
    primary: outcome.primary,
    day: distinct.size === 1 ? ([...distinct][0] ?? null) : null,
    unit: '%',
    groups: lots.flatMap(({ groups }) => {
      const dispersion = lotDispersion(distinctGroups(groups));
      return groups.map((group) => germinationGroup(group, dispersion));
    }),
    storage: [...storage.values()].flat(),
    lines: adjusted(lots.flatMap(({ lot, groups }) => lineComparisons(trial, lot, groups, storage.get(lot) ?? []))),
    comparisons: [],
    days: Object.fromEntries(days),
    column: null,
    matters: outcome.matters,
    values: lots.flatMap(({ groups }) => groups).flatMap((group) => unitValues(group, 'storage')),
    leftOut: lots.flatMap(({ leftOut }) => leftOut),
    overall: [],
  };
}

/** p for the number of lots, each of the two tests by itself (methods 4). */
function adjusted(lines: readonly LineComparison[]): readonly LineComparison[] {
  return lines.map((line) => {
    const family = lines.filter(({ test, p }) => test === line.test && p !== null);
    const all = holm(family.map(({ p }) => p ?? 1));
    return line.p === null ? line : { ...line, pAdjusted: all[family.indexOf(line)] ?? line.p };
  });
}

function linesOf({ groups }: StorageUnits) {
  const treatments = [...new Set(groups.map(({ treatment }) => treatment))];
  return treatments.map((treatment) => survivalLine(groups.filter((group) => group.treatment === treatment)));
}
