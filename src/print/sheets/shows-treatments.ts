import type { Trial } from '../../trial/trial.ts';

/** Whether a sheet that lies on the bench may name treatments: not where counting is to be blind, nor while a key is away. */
export const showsTreatments = ({ scoring, sowings, keyKeptApart }: Trial): boolean =>
  scoring.blind !== 'yes' && !keyKeptApart && sowings.every(({ treatment }) => treatment !== null);
