import type { Result } from '../../analysis/analysis.ts';
import type { Measure } from '../../trial/trial.ts';
import { amount } from '../amount.ts';
import { digitsFor } from '../digits-for.ts';
import { differenceWords } from './difference-words.ts';
import { rangeText } from './range-text.ts';

/** A range of differences in the outcome's own words; "nicht bekannt" where a limit is missing. */
export function range(
  lower: number | null,
  upper: number | null,
  measure: Measure,
  unit: string,
  { column, matters }: Pick<Result, 'column' | 'matters'> = { column: null, matters: null },
): string {
  const words = differenceWords(measure, column, unit);
  const digits = digitsFor(measure, unit, lower === null || upper === null ? null : upper - lower);
  if (lower !== null && upper !== null)
    return rangeText(amount(lower, digits, matters), amount(upper, digits, matters), words);
  return 'nicht bekannt';
}
