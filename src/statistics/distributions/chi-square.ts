import gammainc from '@stdlib/math-base-special-gammainc';

/**
 * Chi-square distribution, lower tail P(X² ≤ x).
 *
 * @param x  0 or more
 * @param df degrees of freedom, above 0
 * @throws {RangeError} outside those
 *
 * Source: incomplete gamma function of @stdlib. Checked against: R `pchisq`.
 */
export function chiSquareCdf(x: number, df: number): number {
  return tail(x, df, false);
}

/** Upper tail P(X² > x), to full relative precision however small. */
export function chiSquareUpper(x: number, df: number): number {
  return tail(x, df, true);
}

function tail(x: number, df: number, upper: boolean): number {
  if (!(x >= 0 && df > 0 && df < Infinity)) {
    throw new RangeError(`chi-square needs 0 or more and degrees of freedom above 0, got ${x} on ${df}`);
  }
  return x === Infinity ? Number(upper === false) : gammainc(x / 2, df / 2, true, upper);
}
