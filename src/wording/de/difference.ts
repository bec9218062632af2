import type { Result } from '../../analysis/analysis.ts';
import { amount } from '../amount.ts';
import { digitsFor } from '../digits-for.ts';
import { differenceText } from './difference-text.ts';
import { differenceWords } from './difference-words.ts';

/** A difference with its direction: "12 mehr je 100", "1,2 Tage früher", "3 mm kürzer". */
export function difference(value: number | null, { measure, column, unit, matters }: Result): string {
  if (value === null) return 'nicht bekannt';
  const digits = digitsFor(measure, unit, Math.abs(value));
  return differenceText(amount(value, digits, matters), differenceWords(measure, column, unit));
}
