import type { Found } from './found.ts';
import { NONE, type Tally } from './tally.ts';

/**
 * One comparison counted.
 *
 * @param truth true difference, in the unit of the interval
 * @param adjusted p adjusted for the number of crops; null where nothing was tested
 */
export function tallyOf({ estimate, interval, p, verdict }: Found, truth: number, adjusted: number | null): Tally {
  const alike = verdict === 'same' ? 1 : 0;
  const lower = interval?.lower ?? null;
  const upper = interval?.upper ?? null;
  if (lower === null || upper === null) return { ...NONE, comparisons: 1, alike };
  // `same` may come with an interval off zero: a difference that is there, too small to matter.
  const isShown = verdict === 'different' || verdict === 'matters' || (verdict === 'same' && (lower > 0 || upper < 0));
  const isAbove = (estimate ?? 0) > 0;
  return {
    comparisons: 1,
    known: 1,
    above: isShown && isAbove ? 1 : 0,
    below: isShown && !isAbove ? 1 : 0,
    firm: isShown && adjusted !== null && adjusted <= 0.05 ? 1 : 0,
    smallP: p !== null && p <= 0.05 ? 1 : 0,
    alike,
    covered: lower <= truth && truth <= upper ? 1 : 0,
    width: upper - lower,
    squares: (upper - lower) ** 2,
    lower,
    upper,
  };
}
