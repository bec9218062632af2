import type { Comparison } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { counted } from '../counted.ts';
import { unitWord } from '../unit-word.ts';

/**
 * "6 and 6 trays", "1 and 4 jars", "one tray of each", "both in each of 6 shelves"; where single trays of
 * several lots are compared, "both in each of 5 lots".
 */
export function unitsOfEach(trial: Trial, { units, lot }: Pick<Comparison, 'units' | 'lot'>): string {
  const { treatment, control, kind } = units;
  if (kind === 'block' && lot === 'all') return `both in each of ${counted(treatment, 'lot')}`;
  if (kind === 'block') return `both in each of ${treatment} ${unitWord(trial, kind, treatment)}`;
  if (treatment === 1 && control === 1) return `one ${unitWord(trial, kind)} of each`;
  return `${treatment} and ${control} ${unitWord(trial, kind, Math.max(control, 2))}`;
}
