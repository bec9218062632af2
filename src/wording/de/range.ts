import type { Measure } from '../../trial/trial.ts';
import { amount } from '../amount.ts';
import { digitsFor } from '../digits-for.ts';
import { differenceWords } from './difference-words.ts';
import { rangeText } from './range-text.ts';

/** A range of differences in the outcome's own words; "nicht bekannt" where a limit is missing. */
export function range(lower: number | null, upper: number | null, measure: Measure, unit: string): string {
  const words = differenceWords(measure, null, unit);
  const digits = digitsFor(measure, unit, lower === null || upper === null ? null : upper - lower);
  if (lower !== null && upper !== null) return rangeText(amount(lower, digits), amount(upper, digits), words);
  return 'nicht bekannt';
}
