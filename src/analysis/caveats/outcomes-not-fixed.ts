import type { Trial } from '../../trial/trial.ts';
import { firstCountDate } from '../first-count-date.ts';
import { fixedOn } from '../fixed-on.ts';
import { planChanges } from '../plan-changes.ts';
import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/**
 * What is compared was not fixed before the first count: no outcome is listed, nothing was fixed, too late,
 * the plan was edited, or the plan does not hold this outcome. (An outcome altered since is `plan-changed`.)
 */
export const outcomesNotFixed: Rule = (trial, results) => {
  if (!hasComparisons(results)) return [];
  const evidence = { fixed: trial.plan?.fixed ?? trial.fixedBeforehand, firstCount: firstCountDate(trial) };
  const reason = reasonForAll(trial);
  if (reason !== null) return [makeCaveat('outcomes-not-fixed', {}, { reason, ...evidence })];

  const added = planChanges(trial)
    .changes.filter(({ planned }) => planned === null)
    .map(({ what }) => what);
  return results
    .filter(({ outcome }) => added.includes(`outcomes.${outcome}`))
    .map(({ outcome }) => makeCaveat('outcomes-not-fixed', { outcome }, { reason: 'not-in-plan', ...evidence }));
};

function reasonForAll(trial: Trial): Evidence['outcomes-not-fixed']['reason'] | null {
  const { plan, fixedBeforehand, outcomes } = trial;
  if (outcomes.length === 0) return 'none-listed';
  if (fixedOn(trial) !== null) return null;
  if (plan === null && fixedBeforehand === null) return 'nothing-fixed';
  const firstCount = firstCountDate(trial);
  const wasInTime = plan !== null && (firstCount === null || plan.fixed < firstCount);
  return wasInTime ? 'plan-edited' : 'fixed-too-late';
}
