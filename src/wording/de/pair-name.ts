import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';

/** "Dichtes Glas gegen Papiertüte": what was compared, wherever it was. */
export const pairName = (trial: Trial, { treatment, control }: Pick<Comparison, 'treatment' | 'control'>): string =>
  `${label(trial, treatment)} gegen ${label(trial, control)}`;
