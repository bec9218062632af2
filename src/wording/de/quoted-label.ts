import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { quoted } from './quoted.ts';

/** A treatment's label inside a sentence: always quoted, for its case cannot be bent. */
export const quotedLabel = (trial: Trial, treatment: string): string => quoted(label(trial, treatment));
