import type { Trial } from '../../trial/trial.ts';
import { quotedLabel } from './quoted-label.ts';

/** A noun with a treatment's label: "Schalen „Dichtes Glas“". */
export const labelled = (trial: Trial, treatment: string, noun: string): string =>
  `${noun} ${quotedLabel(trial, treatment)}`;
