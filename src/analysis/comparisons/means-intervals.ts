import type { Comparison, Interval, IntervalMethod } from '../analysis.ts';
import type { Limits } from './limits.ts';
import type { Timing } from './timing-of.ts';

/** Intervals of a difference of means at both levels, and what was computed before coarse checks widened them. */
export interface MeansIntervals {
  readonly interval: Interval;
  readonly ninety: Limits;
  /** What `different` rests on. */
  readonly own: Limits;
  readonly welch: Comparison['welch'];
}

/**
 * Intervals of a difference of means. With coarse checks they are widened to take in what the checks
 * allow, at both levels (methods 5); the interval's own is kept, for `different`, save for spreads.
 *
 * @param limits of the test, at a level
 */
export function meansIntervals(
  limits: (level: number) => Limits,
  method: IntervalMethod,
  { bracket, coarse, ownHolds }: Timing,
): MeansIntervals {
  const [own, ninety] = [limits(0.95), limits(0.9)];
  if (!coarse || bracket === null) {
    return { interval: { level: 0.95, ...own, method }, ninety, own, welch: null };
  }
  const whole = hull(own, bracket);
  return {
    interval: { level: 0.95, ...whole, method: 'welch-bracket' },
    ninety: hull(ninety, bracket),
    own: ownHolds ? own : whole,
    welch: { level: 0.95, ...own },
  };
}

const hull = (one: Limits, other: Limits): Limits => ({
  lower: Math.min(one.lower, other.lower),
  upper: Math.max(one.upper, other.upper),
});
