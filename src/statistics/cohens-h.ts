/**
 * Difference of two proportions on the arcsine scale, on which a step near 0 or 100 % weighs as much as
 * one in the middle: 2 asin √first − 2 asin √second, −π to π.
 *
 * @param first  proportion, 0 to 1
 * @param second proportion, 0 to 1
 * @throws {RangeError} outside 0 to 1
 *
 * Source: Cohen (1988), Statistical Power Analysis, 2nd ed., equation 6.2.1, from memory. Checked against: R arithmetic.
 */
export function cohensH(first: number, second: number): number {
  if (!(first >= 0 && first <= 1 && second >= 0 && second <= 1)) {
    throw new RangeError(`cohensH needs two proportions, got ${first} and ${second}`);
  }
  return 2 * Math.asin(Math.sqrt(first)) - 2 * Math.asin(Math.sqrt(second));
}
