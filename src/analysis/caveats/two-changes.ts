import type { Trial, Treatment, Varies } from '../../trial/trial.ts';
import type { Evidence } from './evidence.ts';
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

type Change = Evidence['two-changes']['changes'][number];

/** What each recorded key stands for among the things that a question may vary. */
const RECORDS: Readonly<Record<'soak' | 'temperature' | 'moisture', readonly Varies[]>> = {
  soak: ['soak'],
  temperature: ['temperature', 'storage'],
  moisture: ['drying', 'storage'],
};

function changesBetween({ varies }: Trial, treatment: Treatment, control: Treatment): readonly Change[] {
  const recorded = [
    { what: 'soak' as const, treatment: treatment.soakHours, control: control.soakHours },
    { what: 'temperature' as const, treatment: treatment.temperature, control: control.temperature },
    { what: 'moisture' as const, treatment: treatment.moisture, control: control.moisture },
  ]
    .filter((change) => change.what !== 'soak' || varies === 'soak')
    .filter((change) => change.treatment !== null && change.control !== null && change.treatment !== change.control);
  if (varies === null || recorded.some(({ what }) => RECORDS[what].includes(varies))) return recorded;
  return [...recorded, { what: 'varies', treatment: varies, control: null }];
}
