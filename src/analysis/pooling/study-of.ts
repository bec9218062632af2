import { newcombeInterval } from '../../statistics/newcombe-interval.ts';
import { normalQuantile } from '../../statistics/distributions/normal.ts';
import type { PooledTrial } from '../pooled.ts';
import { percent } from '../comparisons/percent.ts';
import type { Candidate } from './candidates-of.ts';

/** Dispersion that is assumed where a treatment had one tray, so that nothing can be measured (methods 2, 10). */
const ASSUMED = 2;

type Study = Pick<PooledTrial, 'estimate' | 'se' | 'lower' | 'upper' | 'basis' | 'seeds'>;

/**
 * A trial's difference with its standard error (methods 10): half the width of its 95 % interval divided by 1.959964,
 * whatever quantile built the interval. Where a treatment had one tray, the interval covers seed luck only; then that
 * of half as many seeds takes its place, as a dispersion of 2 would give.
 *
 * @returns null where the trial has no interval: one tray of each and no seeds to count, or readings all alike
 */
export function studyOf(candidate: Candidate): Study | null {
  const { comparison, turned } = candidate;
  const { estimate, interval } = comparison;
  if (estimate === null || interval === null || interval.lower === null || interval.upper === null) return null;
  const seeds = seedsOf(candidate);
  const z = normalQuantile(0.975);
  const single = interval.method === 'newcombe-seeds-only';
  if (single && seeds === null) return null;

  const share = ({ count, seeds: sown }: { count: number; seeds: number }) => ({
    share: count / sown,
    size: sown / ASSUMED,
  });
  const limits =
    single && seeds
      ? percent(newcombeInterval(share(seeds.treatment), share(seeds.control), z))
      : turned
        ? { lower: -interval.upper, upper: -interval.lower }
        : { lower: interval.lower, upper: interval.upper };
  const se = (limits.upper - limits.lower) / 2 / z;
  if (!(se > 0)) return null;
  return {
    estimate: turned ? -estimate || 0 : estimate,
    se,
    ...limits,
    basis: single ? 'half-seeds' : 'interval',
    seeds,
  };
}

/** Seeds up and sown under both, in one lot. */
function seedsOf({ result, comparison, treatment, control }: Candidate): PooledTrial['seeds'] {
  const of = (id: string) => {
    const group = result.groups.find(
      (each) => each.lot === comparison.lot && each.treatment === id && each.stored === null,
    );
    return group?.count != null && group.seeds ? { count: group.count, seeds: group.seeds } : null;
  };
  const [t, c] = [of(treatment), of(control)];
  return result.measure === 'germination' && t && c ? { treatment: t, control: c } : null;
}
