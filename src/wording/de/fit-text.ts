import type { Amount } from '../amount.ts';
import type { DifferenceWords } from './difference-words.ts';
import { rangeEnds } from './range-ends.ts';

/** What the data fit with, after "die Daten passen": "zu allem zwischen 3 und 21 mehr je 100". */
export function fitText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  const { from, to } = rangeEnds(lower, upper, words);
  return from === null ? `zu ${to}` : `zu allem zwischen ${from} und ${to}`;
}
