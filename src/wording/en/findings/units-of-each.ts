import type { Comparison } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { unitWord } from '../unit-word.ts';

/** "6 and 6 trays", "1 and 4 jars", "one tray of each", "both in each of 6 shelves". */
export function unitsOfEach(trial: Trial, { treatment, control, kind }: Comparison['units']): string {
  if (kind === 'block') return `both in each of ${treatment} ${unitWord(trial, kind, treatment)}`;
  if (treatment === 1 && control === 1) return `one ${unitWord(trial, kind)} of each`;
  return `${treatment} and ${control} ${unitWord(trial, kind, Math.max(control, 2))}`;
}
