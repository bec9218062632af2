import { checkCounted, type Counted } from './counted.ts';

/**
 * Pearson's chi-square of two counted groups, without continuity correction; 0 where both are at 0 or
 * both at 100 %, where nothing speaks against them being alike.
 *
 * @throws {RangeError} when a group is not a count out of seeds
 *
 * Source: Pearson (1900). Checked against: R `prop.test(correct = FALSE)$statistic`.
 */
export function pearsonTwoByTwo(a: Counted, b: Counted): number {
  checkCounted('pearsonTwoByTwo', a);
  checkCounted('pearsonTwoByTwo', b);
  const seeds = a.seeds + b.seeds;
  const count = a.count + b.count;
  if (count === 0 || count === seeds) return 0;
  const cross = a.count * (b.seeds - b.count) - b.count * (a.seeds - a.count);
  return (seeds * cross ** 2) / (a.seeds * b.seeds * count * (seeds - count));
}
