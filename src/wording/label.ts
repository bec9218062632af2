import type { Trial } from '../trial/trial.ts';

/** A treatment's label as its author wrote it; its id where there is none. */
export const label = (trial: Trial, treatment: string): string =>
  trial.treatments.find(({ id }) => id === treatment)?.label ?? treatment;
