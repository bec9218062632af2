import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { label } from '../label.ts';
import { lotsName } from './lots-name.ts';
import { storedName } from './stored-name.ts';

/** "Dichtes Glas gegen Papiertüte", with lot and storage time where there are several. */
export function comparisonName(trial: Trial, comparison: Comparison): string {
  const { treatment, control, stored } = comparison;
  const pair = `${label(trial, treatment)} gegen ${label(trial, control)}`;
  const where = trial.lots.length > 1 ? `, ${lotsName(trial, comparison)}` : '';
  return `${pair}${where}${stored === null ? '' : `, ${storedName(stored)}`}`;
}
