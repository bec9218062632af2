import type { Comparison } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { lotsName } from './lots-name.ts';
import { pairName } from './pair-name.ts';
import { storedName } from './stored-name.ts';

/** "Dichtes Glas gegen Papiertüte", with lot and storage time where there are several. */
export function comparisonName(trial: Trial, comparison: Comparison): string {
  const { stored } = comparison;
  const pair = pairName(trial, comparison);
  const where = trial.lots.length > 1 ? `, ${lotsName(trial, comparison)}` : '';
  return `${pair}${where}${stored === null ? '' : `, ${storedName(stored)}`}`;
}
