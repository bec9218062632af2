import normal from '@stdlib/stats-base-dists-normal';

/**
 * Standard normal distribution: lower tail P(Z ≤ x).
 *
 * @throws {RangeError} when x is not a number
 *
 * Source: @stdlib (complementary error function). Checked against: R `pnorm`, tails down to 1e-300.
 */
export function normalCdf(x: number): number {
  if (Number.isNaN(x)) throw new RangeError(`normalCdf needs a number, got ${x}`);
  return x > 8.3 ? 1 : normal.cdf(x, 0, 1); // beyond, 1 is the nearest double
}

/** Upper tail P(Z > x), to full relative precision where `1 - cdf` would lose it. */
export function normalUpper(x: number): number {
  return normalCdf(-x);
}

/**
 * The x with P(Z ≤ x) = p. Newton steps on the logarithm of the tail probability, because the quantile
 * of @stdlib loses digits below 1e-10 and is infinite below 1e-16.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that
 *
 * Checked against: R `qnorm`, down to 1e-300.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile needs a probability between 0 and 1, got ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);

  let x = p > 1e-8 ? normal.quantile(p, 0, 1) : -Math.sqrt(-2 * Math.log(p));
  for (let round = 0; round < 20; round++) {
    const tail = normalCdf(x);
    const step = (Math.log(tail / p) * tail) / normal.pdf(x, 0, 1);
    x -= step;
    if (Math.abs(step) <= 1e-14 * Math.abs(x)) break;
  }
  return x;
}
