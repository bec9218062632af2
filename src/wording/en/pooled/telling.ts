import type { Pooled } from '../../../analysis/pooled.ts';
import { amount, type Amount } from '../../amount.ts';
import { digitsFor } from '../../digits-for.ts';
import { differenceWords, type DifferenceWords } from '../difference-words.ts';

/** How differences of a pooled question are said. */
export function tellingOf({ measure, column, valueUnit: unit, trials }: Pooled): {
  readonly words: DifferenceWords;
  told(value: number): Amount;
} {
  const [first] = trials;
  const digits = digitsFor(measure, unit, first ? first.upper - first.lower : null);
  return { words: differenceWords(measure, column, unit), told: (value) => amount(value, digits) };
}
