import { normalQuantile } from './distributions/normal.ts';

/**
 * By how much the shares of two alike units commonly differ through luck alone: half of such pairs differ by less
 * than `half`, 19 of 20 by less than `most`. Normal approximation with variance φ p q (1/n₁ + 1/n₂); not for
 * shares next to 0 or 1.
 *
 * @param share proportion that comes up in both, strictly between 0 and 1
 * @param one   seeds in one unit
 * @param other seeds in the other
 * @param used  dispersion φ between units, 1 or more: 1 is seed luck alone
 * @returns proportions
 * @throws {RangeError} outside those
 *
 * Source: variance of a difference of proportions; φ as in Williams (1982) and methods.md 2. Checked against: R
 * `qnorm(c(.75, .975)) * sqrt(phi * p * (1 - p) * (1/n1 + 1/n2))`.
 */
export function luckOfTwo(share: number, one: number, other: number, used: number): { half: number; most: number } {
  if (!(share > 0 && share < 1 && one > 0 && other > 0 && used >= 1)) {
    throw new RangeError(`luckOfTwo needs a share, seeds and a dispersion, got ${share}, ${one}, ${other}, ${used}`);
  }
  const sd = Math.sqrt(used * share * (1 - share) * (1 / one + 1 / other));
  return { half: normalQuantile(0.75) * sd, most: normalQuantile(0.975) * sd };
}
