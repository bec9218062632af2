import { findRoot } from './find-root.ts';
import { checkCounted, type Counted } from './counted.ts';
import { newcombeInterval } from './newcombe-interval.ts';

/**
 * One unit a treatment: how alike would seeds of one unit have to be (correlation ρ) for the interval of
 * the difference to take in zero? Each unit's seeds then stand for n/(1 + (n − 1)ρ) independent ones.
 *
 * @param first    the one unit of a treatment
 * @param second   the one unit of the other
 * @param quantile normal quantile of the level of the interval
 * @returns ρ, or null with `already` (zero is inside without any) or `never` (not even at ρ = 1)
 * @throws {RangeError} when a unit is not a count out of seeds, or has less than one seed
 *
 * Source: design effect of Kish (1965), Survey Sampling, section 5.4, from memory; methods.md 2.
 * Checked against: R `uniroot` on the same interval.
 */
export function kishTipping(
  first: Counted,
  second: Counted,
  quantile: number,
): { rho: number | null; note: 'already' | 'never' | null } {
  for (const unit of [first, second]) {
    checkCounted('kishTipping', unit);
    if (unit.seeds < 1) throw new RangeError(`kishTipping needs a seed or more, got ${unit.seeds}`);
  }
  const effective = ({ count, seeds }: Counted, rho: number) => ({
    share: count / seeds,
    size: seeds / (1 + (seeds - 1) * rho),
  });
  const isRise = first.count / first.seeds >= second.count / second.seeds;
  /** Distance of the interval from zero; below 0 when it takes zero in. */
  const clear = (rho: number) => {
    const { lower, upper } = newcombeInterval(effective(first, rho), effective(second, rho), quantile);
    return isRise ? lower : -upper;
  };
  if (clear(0) <= 0) return { rho: null, note: 'already' };
  if (clear(1) > 0) return { rho: null, note: 'never' };
  return { rho: findRoot(clear, 0, 1), note: null };
}
