import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { lotName } from './lot-name.ts';
import { storedName } from './stored-name.ts';

/** "Dichtes Glas gegen Papiertüte", with lot and storage time where there are several. */
export function comparisonName(trial: Trial, { treatment, control, lot, stored }: Comparison): string {
  const pair = `${label(trial, treatment)} gegen ${label(trial, control)}`;
  const where = trial.lots.length > 1 ? `, ${lot === 'all' ? 'alle Partien zusammen' : lotName(trial, lot)}` : '';
  return `${pair}${where}${stored === null ? '' : `, ${storedName(stored)}`}`;
}
