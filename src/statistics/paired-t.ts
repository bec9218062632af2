import { mean } from 'simple-statistics';
import { tTwoSided } from './distributions/t.ts';
import { variance } from './variance.ts';
import type { TTest } from './welch-t.ts';

/**
 * Mean of differences within pairs or blocks, against zero.
 *
 * @param differences one a block, two or more
 * @returns null where all differences are the same
 * @throws {RangeError} with fewer than two finite values
 *
 * Source: Student (1908), Biometrika 6, 1–25. Checked against: R `t.test(differences)`.
 */
export function pairedT(differences: readonly number[]): TTest | null {
  const square = variance(differences) / differences.length;
  if (square === 0) return null;
  const difference = mean([...differences]);
  const se = Math.sqrt(square);
  const df = differences.length - 1;
  const statistic = difference / se;
  return { difference, se, df, statistic, p: tTwoSided(statistic, df) };
}
