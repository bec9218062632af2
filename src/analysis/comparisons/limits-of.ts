import { tQuantile } from '../../statistics/distributions/t.ts';
import type { TTest } from '../../statistics/welch-t.ts';
import type { Limits } from './limits.ts';

/** Limits of the interval of a t test at a level. */
export function limitsOf({ difference, se, df }: TTest, level: number): Limits {
  const reach = tQuantile((1 + level) / 2, df) * se;
  return { lower: difference - reach, upper: difference + reach };
}
