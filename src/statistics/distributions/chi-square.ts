import { incompleteGamma } from './incomplete-gamma.ts';

/**
 * Chi-square distribution, lower tail P(X² ≤ x).
 *
 * @param x  0 or more
 * @param df degrees of freedom, above 0
 * @throws {RangeError} outside those
 *
 * Checked against: R `pchisq`.
 */
export function chiSquareCdf(x: number, df: number): number {
  return tail(x, df, 'lower');
}

/** Upper tail P(X² > x), to full relative precision however small. */
export function chiSquareUpper(x: number, df: number): number {
  return tail(x, df, 'upper');
}

function tail(x: number, df: number, which: 'lower' | 'upper'): number {
  if (!(x >= 0 && df > 0 && df < Infinity)) {
    throw new RangeError(`chi-square needs 0 or more and degrees of freedom above 0, got ${x} on ${df}`);
  }
  return incompleteGamma(df / 2, x / 2, which);
}
