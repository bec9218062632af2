import type { Comparison } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';

/** Of which lot a comparison is, or of how many together; null in a trial of one lot. */
export function placeOf(trial: Trial, { lot, lots }: Comparison, words: Words): string | null {
  if (lot === 'all') {
    return words.say('chart.togetherOf', { lots: words.counted(lots?.length ?? trial.lots.length, 'lot') });
  }
  return trial.lots.length > 1 ? words.lotName(trial, lot) : null;
}
