import { mean } from 'simple-statistics';
import { checkValues } from './check-values.ts';

/**
 * Sample variance (n − 1) of unit values. Values that differ by rounding only (less than 1e-12 of their
 * size) have variance 0, so that means of equal readings do not look like a tiny, very sure spread.
 *
 * @throws {RangeError} with fewer than two finite values
 *
 * Checked against: R `var`; certified values of NIST StRD (Michelso, NumAcc4).
 */
export function variance(values: readonly number[]): number {
  checkValues('variance', values, 2);
  const [first = 0] = values;
  const shifted = values.map((value) => value - first);
  let [least, most, size] = [0, 0, Math.abs(first)];
  for (const value of shifted) {
    least = Math.min(least, value);
    most = Math.max(most, value);
    size = Math.max(size, Math.abs(first + value));
  }
  if (most - least <= 1e-12 * size) return 0;

  const centre = mean(shifted);
  return shifted.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1);
}
