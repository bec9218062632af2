import { remembered } from '../remembered.ts';
import { fQuantile } from './f.ts';
import { incompleteBeta } from './incomplete-beta.ts';

/**
 * Student's t distribution, upper tail P(T > x), to full relative precision however small: from the
 * incomplete beta function, never as `1 - cdf`.
 *
 * @param df degrees of freedom, above 0; need not be whole (Welch)
 * @throws {RangeError} when x is not a number or df not above 0
 *
 * Checked against: R `pt(x, df, lower.tail = FALSE)`.
 */
export function tUpper(x: number, df: number): number {
  if (Number.isNaN(x) || !(df > 0 && df < Infinity)) {
    throw new RangeError(`tUpper needs a number and degrees of freedom above 0, got ${x} on ${df}`);
  }
  if (x < 0) return 1 - tUpper(-x, df);
  const square = (x * x) / df;
  if (square === Infinity) return 0;
  const [near, far] = [1 / (1 + square), square / (1 + square)];
  // Near the centre the other tail of the beta distribution is the one that keeps its digits.
  if (x < 1) return 0.5 - incompleteBeta(far, near, 0.5, df / 2) / 2;
  return incompleteBeta(near, far, df / 2, 0.5) / 2;
}

/** Lower tail P(T ≤ x). */
export function tCdf(x: number, df: number): number {
  return tUpper(-x, df);
}

/** Two-sided p-value, P(|T| ≥ |x|). */
export function tTwoSided(x: number, df: number): number {
  return 2 * tUpper(Math.abs(x), df);
}

/**
 * The x with P(T ≤ x) = p: its square is a quantile of F on 1 and df.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that, or when df is not above 0
 *
 * Checked against: R `qt`.
 */
export function tQuantile(p: number, df: number): number {
  if (!(p > 0 && p < 1 && df > 0 && df < Infinity)) {
    throw new RangeError(`tQuantile needs a probability between 0 and 1 and df above 0, got ${p} on ${df}`);
  }
  return quantile(p, df);
}

const quantile = remembered((p, df) => {
  const within = 2 * Math.abs(p - 0.5);
  if (within === 0) return 0;
  const square = within < 0.5 ? fQuantile(within, 1, df) : 1 / fQuantile(2 * Math.min(p, 1 - p), df, 1);
  return Math.sign(p - 0.5) * Math.sqrt(square);
});
