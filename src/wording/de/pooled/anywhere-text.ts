import type { Ends } from '../../pooled-facts.ts';
import type { DifferenceWords } from '../difference-words.ts';
import { rangeEnds } from '../range-ends.ts';

/** Where something may lie: "irgendwo zwischen 6 weniger und 24 mehr je 100". */
export function anywhereText({ lower, upper }: Ends, words: DifferenceWords): string {
  const { from, to } = rangeEnds(lower, upper, words);
  return from === null ? `bei ${to}` : `irgendwo zwischen ${from} und ${to}`;
}
