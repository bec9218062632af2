import type { Trial } from '../trial/trial.ts';
import { fixedOn } from './fixed-on.ts';
import { testsOf } from './storage/tests-of.ts';
import { planChanges } from './plan-changes.ts';

/**
 * Whether an outcome and its margin were fixed before the first count: what `same` needs (methods 7).
 * The outcome must be listed in trial.yaml; where a plan was frozen, it must hold the outcome with the
 * same measure, column, day and margin. Else it is not the outcome that was fixed.
 */
export function fixedBeforehand(trial: Trial, outcome: { readonly id: string }): boolean {
  // The comparison test by test that comes with a storage series was fixed with it.
  const listed = trial.outcomes.find(
    ({ id, measure }) => id === outcome.id || (measure === 'storage' && testsOf(id) === outcome.id),
  );
  if (listed === undefined || fixedOn(trial) === null) return false;

  const path = `outcomes.${listed.id}`;
  const altered = ['', '.measure', '.column', '.day', '.matters'].map((field) => path + field);
  return !planChanges(trial).changes.some(({ what }) => altered.includes(what));
}
