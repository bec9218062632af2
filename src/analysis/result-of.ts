import type { Outcome, Trial } from '../trial/trial.ts';
import type { Comparison, Group, Result } from './analysis.ts';
import { adjusted } from './comparisons/adjusted.ts';
import type { Context } from './comparisons/context.ts';
import { germinationComparison } from './comparisons/germination-comparison.ts';
import { lotDispersion } from './comparisons/lot-dispersion.ts';
import { meansComparison } from './comparisons/means-comparison.ts';
import { overallTests } from './comparisons/overall-tests.ts';
import { pooledComparisons } from './comparisons/pooled-comparisons.ts';
import { germinationGroup } from './groups/germination-group.ts';
import { meansGroup } from './groups/means-group.ts';
import { unitValues } from './groups/unit-values.ts';
import { isSpeed } from './measures/is-speed.ts';
import { storageResult } from './storage/storage-result.ts';
import { unitOfDifference } from './measures/unit-of-difference.ts';
import { fixedBeforehand } from './fixed-beforehand.ts';
import { distinctGroups } from './units/distinct-groups.ts';
import type { LotUnits } from './units/lot-units.ts';
import { outcomeUnits } from './units/outcome-units.ts';

/**
 * One outcome of a trial: groups, comparisons in each lot and pooled over lots (methods 0 to 7). The
 * ceiling of a comparison and the result with left-out sowings are put in later.
 *
 * @param trial       its rows in one order (sortedTrial)
 * @param withLeftOut takes in the sowings that were left out, and missed checks as last counted
 */
export function resultOf(trial: Trial, outcome: Outcome, withLeftOut = false): Result {
  if (outcome.measure === 'storage') return storageResult(trial, outcome);
  const { unit, lots } = outcomeUnits(trial, outcome, withLeftOut);
  const context = { outcome, unit: unitOfDifference(unit), marginFixed: fixedBeforehand(trial, outcome) };
  const days = lots.flatMap(({ lot, day }) => (day === null ? [] : [[lot, day] as const]));
  const distinct = new Set(days.map(([, day]) => day));
  const [first = null] = distinct;
  const isOneDay = distinct.size === 1 && !isSpeed(outcome.measure);

  return {
    outcome: outcome.id,
    measure: outcome.measure,
    primary: outcome.primary,
    day: isOneDay ? first : null,
    unit,
    groups: lots.flatMap((lot) => groupsOf(lot, outcome)),
    comparisons: comparisonsOf(trial, lots, context),
    days: Object.fromEntries(days),
    column: outcome.column,
    matters: outcome.matters,
    values: lots.flatMap((lot) => lot.groups).flatMap((group) => unitValues(group, outcome.measure)),
    leftOut: lots.flatMap((lot) => lot.leftOut),
    overall: outcome.measure === 'germination' ? [] : lots.flatMap(({ groups: own }) => overallTests(own)),
  };
}

function groupsOf({ groups }: LotUnits, { measure }: Outcome): readonly Group[] {
  if (measure !== 'germination') return groups.map((group) => meansGroup(group, measure));
  const dispersion = lotDispersion(distinctGroups(groups));
  return groups.map((group) => germinationGroup(group, dispersion));
}

/** Within each lot, then pooled over lots, with p-values adjusted for their number. */
function comparisonsOf(trial: Trial, lots: readonly LotUnits[], context: Context): readonly Comparison[] {
  const compare = context.outcome.measure === 'germination' ? germinationComparison : meansComparison;
  const pairs = lots.flatMap((lot) => lot.pairs);
  const within = pairs.map((pair) => compare(pair, context)).filter((comparison) => comparison !== null);
  return adjusted([...within, ...pooledComparisons(pairs, trial.lots, context)]);
}
