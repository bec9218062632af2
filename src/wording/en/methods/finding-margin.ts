import type { Result } from '../../../analysis/analysis.ts';
import { fixedBeforehand } from '../../../analysis/fixed-beforehand.ts';
import { fixedOn } from '../../../analysis/fixed-on.ts';
import type { Trial } from '../../../trial/trial.ts';
import { date } from '../date.ts';
import { differenceWords } from '../difference-words.ts';
import { sizeText } from '../size-text.ts';

/** "the smallest difference that matters is 10 per 100, fixed on 4 April 2026." */
export function findingMargin(trial: Trial, result: Result): string {
  if (result.matters === null) return 'no smallest difference that matters was given.';
  const words = differenceWords(result.measure, result.column, result.unit);
  const size = `the smallest difference that matters is ${sizeText(result.matters, words)}`;
  const fixing = fixedBeforehand(trial, { id: result.outcome }) ? fixedOn(trial) : null;
  if (fixing === null) return `${size}, not fixed before the first count.`;
  return `${size}, fixed on ${date(fixing.date)}${fixing.how === 'stated' ? ', as the authors state' : ''}.`;
}
