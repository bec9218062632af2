import type { Measure } from '../../trial/trial.ts';
import type { Pair } from '../units/lot-units.ts';
import { timingOf, type Timing } from './timing-of.ts';

/**
 * What the checks allow for a difference of times pooled over lots: the mean of the lots' brackets with the weights of
 * the pooled difference, which holds the pooled difference as each bracket holds its own. Coarse as soon as the
 * checks of one lot are.
 */
export function pooledTiming(pairs: readonly Pair[], weights: readonly number[], measure: Measure): Timing {
  const timings = pairs.map(({ treated, control }) => timingOf(measure, treated, control));
  const coarse = timings.some((timing) => timing.coarse);
  const ownHolds = measure !== 'spread';
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  let [lower, upper] = [0, 0];
  for (const [index, { bracket }] of timings.entries()) {
    if (bracket === null) return { bracket: null, coarse, ownHolds };
    const share = (weights[index] ?? 0) / all;
    lower += share * bracket.lower;
    upper += share * bracket.upper;
  }
  return { bracket: { lower, upper }, coarse, ownHolds };
}
