import type { Amount } from '../amount.ts';
import type { DifferenceWords } from './difference-words.ts';
import { rangeEnds } from './range-ends.ts';

/**
 * A range of differences in words, never with minus signs: "3 bis 21 mehr je 100", "9 weniger bis 17 mehr je
 * 100", "0 bis 17 mehr je 100".
 */
export function rangeText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  const { from, to } = rangeEnds(lower, upper, words);
  return from === null ? to : `${from} bis ${to}`;
}
