import { wilsonInterval } from './wilson-interval.ts';

/** A proportion and the number of seeds it stands for (effective, need not be whole). */
export interface Share {
  readonly share: number;
  readonly size: number;
}

/**
 * Interval for the difference of two proportions, first minus second: hybrid of the two Wilson intervals.
 * Never leaves −1 to 1 and has a width at 0 and 100 %, where the textbook interval has none.
 *
 * @param quantile normal or t quantile of the wanted level, above 0
 * @returns limits as proportions, −1 to 1
 * @throws {RangeError} as wilsonInterval
 *
 * Source: Newcombe (1998b), Stat. Med. 17, 873–890, method 10 (hybrid score, no continuity correction).
 * Checked against: his Table II; the same formula on limits of R `prop.test(correct = FALSE)`.
 */
export function newcombeInterval(first: Share, second: Share, quantile: number): { lower: number; upper: number } {
  const one = wilsonInterval(first.share, first.size, quantile);
  const two = wilsonInterval(second.share, second.size, quantile);
  const difference = first.share - second.share;
  const lower = difference - Math.hypot(first.share - one.lower, two.upper - second.share);
  const upper = difference + Math.hypot(one.upper - first.share, second.share - two.lower);
  return { lower: Math.max(-1, lower), upper: Math.min(1, upper) };
}
