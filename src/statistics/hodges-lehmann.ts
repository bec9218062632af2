import { median } from 'simple-statistics';
import { checkValues } from './check-values.ts';

/**
 * Shift between two groups of units: the median of all differences first minus second, which one odd
 * unit cannot move far.
 *
 * @throws {RangeError} when a group is empty or holds what is not a finite number
 *
 * Source: Hodges & Lehmann (1963), Ann. Math. Stat. 34, 598–611.
 * Checked against: R `median(outer(a, b, "-"))`.
 */
export function hodgesLehmann(a: readonly number[], b: readonly number[]): number {
  checkValues('hodgesLehmann', a, 1);
  checkValues('hodgesLehmann', b, 1);
  return median(a.flatMap((one) => b.map((two) => one - two)));
}
