import { mean } from 'simple-statistics';
import { tTwoSided } from './distributions/t.ts';
import { variance } from './variance.ts';

/** A t test of a difference. Its interval is `difference ± tQuantile((1 + level)/2, df) · se`. */
export interface TTest {
  readonly difference: number;
  readonly se: number;
  readonly df: number;
  readonly statistic: number;
  /** Two-sided. */
  readonly p: number;
}

/**
 * Difference of two means of units, first minus second, without assuming equal spread.
 *
 * @param a values of the units, two or more
 * @param b likewise
 * @returns null where neither group varies: then the readings are too coarse to judge anything by
 * @throws {RangeError} with fewer than two finite values in a group
 *
 * Source: Welch (1947), Biometrika 34, 28–35; df after Satterthwaite (1946), Biometrics Bull. 2, 110–114.
 * Checked against: R `t.test(a, b)`.
 */
export function welchT(a: readonly number[], b: readonly number[]): TTest | null {
  const one = variance(a) / a.length;
  const two = variance(b) / b.length;
  if (one + two === 0) return null;

  const difference = mean([...a]) - mean([...b]);
  const se = Math.sqrt(one + two);
  // As shares of the whole, so that very small or large units neither under- nor overflow.
  const part = one / (one + two);
  const df = 1 / (part ** 2 / (a.length - 1) + (1 - part) ** 2 / (b.length - 1));
  const statistic = difference / se;
  return { difference, se, df, statistic, p: tTwoSided(statistic, df) };
}
