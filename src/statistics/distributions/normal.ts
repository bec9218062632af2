import erfc from '@stdlib/math-base-special-erfc';

/**
 * Standard normal distribution: lower tail P(Z ≤ x).
 *
 * @throws {RangeError} when x is not a number
 *
 * Source: @stdlib (complementary error function). Checked against: R `pnorm`, tails down to 1e-300.
 */
export function normalCdf(x: number): number {
  if (Number.isNaN(x)) throw new RangeError(`normalCdf needs a number, got ${x}`);
  return erfc(-x / Math.SQRT2) / 2;
}

/** Upper tail P(Z > x), to full relative precision where `1 - cdf` would lose it. */
export function normalUpper(x: number): number {
  return normalCdf(-x);
}

/** Density of the standard normal distribution. Checked against: R `dnorm`. */
export function normalDensity(x: number): number {
  return Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * The x with P(Z ≤ x) = p. Newton steps on the logarithm of the tail probability, which is concave: from the second
 * step on they near the root from one side.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that
 *
 * Checked against: R `qnorm`, down to 1e-300.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile needs a probability between 0 and 1, got ${p}`);
  if (p >= 0.5) return p === 0.5 ? 0 : -normalQuantile(1 - p);

  let x = -Math.sqrt(-2 * Math.log(p));
  for (let round = 0; round < 50; round++) {
    const tail = normalCdf(x);
    const step = (Math.log(tail / p) * tail) / normalDensity(x);
    x -= step;
    if (Math.abs(step) <= 1e-14 * Math.abs(x) + 1e-16) break;
  }
  return x;
}
