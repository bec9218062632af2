import type { Trial } from '../../trial/trial.ts';
import type { Caveat, PlanChange, Result } from '../analysis.ts';
import { planChanges } from '../plan-changes.ts';
import { wantedDay } from '../units/wanted-day.ts';
import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/**
 * What was done differs from what was planned: changes of one outcome are told with it, all others with the
 * whole trial. A day on which nothing was checked, so that another took its place, counts as well. Sowings left
 * out and outcomes added have caveats of their own.
 */
export const planChanged: Rule = (trial, results): readonly Caveat[] => {
  if (!hasComparisons(results)) return [];
  const changes = planChanges(trial).changes.filter(({ what, planned }) => {
    const isAddedOutcome = planned === null && trial.outcomes.some(({ id }) => what === `outcomes.${id}`);
    return !what.endsWith('.left-out') && !isAddedOutcome;
  });
  const isOf = ({ what }: PlanChange, { outcome }: Result) => what.startsWith(`outcomes.${outcome}.`);

  const ofTrial = changes.filter((change) => !results.some((result) => isOf(change, result)));
  const ofOutcomes = results.flatMap((result) => {
    const own = changes.filter((change) => isOf(change, result));
    return [
      ...(own.length === 0 ? [] : [makeCaveat('plan-changed', { outcome: result.outcome }, { changes: own })]),
      ...dayChanges(trial, result),
    ];
  });
  return [...(ofTrial.length === 0 ? [] : [makeCaveat('plan-changed', {}, { changes: ofTrial })]), ...ofOutcomes];
};

/** Lots read on another day than the outcome names. */
function dayChanges(trial: Trial, { outcome, days }: Result): Caveat[] {
  const listed = trial.outcomes.find(({ id }) => id === outcome);
  return Object.entries(days).flatMap(([lot, day]) => {
    const wanted = listed === undefined ? null : wantedDay(listed, lot);
    if (wanted === null || wanted === day) return [];
    const changes = [{ what: `outcomes.${outcome}.day`, planned: String(wanted), done: String(day) }];
    return [makeCaveat('plan-changed', { outcome, lot }, { changes })];
  });
}
