import type { Pooled } from '../../../analysis/pooled.ts';
import { amount, type Amount } from '../../amount.ts';
import { digitsFor } from '../../digits-for.ts';
import type { SaidDifference } from '../../pooled-text.ts';
import { differenceText } from '../difference-text.ts';
import { rangeText } from '../range-text.ts';
import { differenceWords, type DifferenceWords } from '../difference-words.ts';

/** How differences of a pooled question are said. */
export function tellingOf({ measure, column, valueUnit: unit, trials }: Pooled): {
  readonly words: DifferenceWords;
  told(value: number): Amount;
  say(estimate: Amount, lower: Amount, upper: Amount): SaidDifference;
} {
  const [first] = trials;
  const digits = digitsFor(measure, unit, first ? first.upper - first.lower : null);
  const words = differenceWords(measure, column, unit);
  const bare = { ...words, after: '' };
  return {
    words,
    told: (value) => amount(value, digits),
    say: (estimate, lower, upper) => ({
      difference: differenceText(estimate, words),
      range: rangeText(lower, upper, words),
      bareDifference: differenceText(estimate, bare),
      bareRange: rangeText(lower, upper, bare),
    }),
  };
}
