import { changesBetween } from './changes-between.ts';
import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/**
 * A treatment differs from the control in more than one recorded thing (soak, storage temperature, moisture), or
 * in one besides what the question changes. (Soaking that is not the question is `unequal-soak`.) Which of them made a difference cannot be told.
 */
export const twoChanges: Rule = (trial, results) => {
  const control = trial.treatments.find((treatment) => treatment.control);
  if (control === undefined || !hasComparisons(results)) return [];
  return trial.treatments
    .filter(({ id }) => id !== control.id)
    .flatMap((treatment) => {
      const changes = changesBetween(trial, treatment, control);
      const names = { treatment: treatment.id, control: control.id };
      return changes.length < 2 ? [] : [makeCaveat('two-changes', { treatment: treatment.id }, { ...names, changes })];
    });
};
