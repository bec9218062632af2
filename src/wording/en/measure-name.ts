import type { Measure } from '../../trial/trial.ts';

/** A measure in plain words. */
export const measureName = (measure: Measure): string => NAMES[measure];

const NAMES: Readonly<Record<Measure, string>> = {
  germination: 'Came up',
  t50: 'Day by which half were up',
  mgt: 'Mean time to come up',
  maguire: 'Maguire’s rate of coming up',
  spread: 'Time the middle half took to come up',
  trait: 'Measured on plants',
  moisture: 'Moisture of the seed',
  storage: 'Germination over storage time',
};
