import { checkCounted, type Counted } from '../counted.ts';
import { permutationP, type Permutation } from './permutation-p.ts';
import { rearrange } from './rearrange.ts';

/**
 * Permutation test of the difference of two pooled proportions: how often does it come out as large when
 * the treatments are dealt to the units (not to the seeds) anew?
 *
 * @param a    units of one treatment
 * @param b    of the other
 * @param seed of the draws where there are too many arrangements to look at all
 * @returns null where the smallest p that can be had is above 0.05
 * @throws {RangeError} when a group is empty or a unit is not a count out of seeds
 *
 * Source: Fisher (1935), The Design of Experiments; Phipson & Smyth (2010) for drawn arrangements; methods.md 2.
 * Checked against: R `combn`, all arrangements.
 */
export function permuteProportions(
  a: readonly Counted[],
  b: readonly Counted[],
  seed: number | string = 'permutation',
): Permutation | null {
  const units = [...a, ...b];
  for (const unit of units) checkCounted('permuteProportions', unit);
  if (a.length === 0 || b.length === 0) {
    throw new RangeError(`permuteProportions needs units in both groups, got ${a.length} and ${b.length}`);
  }
  const counts = units.reduce((sum, unit) => sum + unit.count, 0);
  const sown = units.reduce((sum, unit) => sum + unit.seeds, 0);
  const difference = (chosen: readonly number[]) => {
    let count = 0;
    let seeds = 0;
    for (const index of chosen) {
      count += units[index]?.count ?? 0;
      seeds += units[index]?.seeds ?? 0;
    }
    return count / seeds - (counts - count) / (sown - seeds);
  };
  const { differences, exact } = rearrange(units.length, a.length, difference, seed);
  return permutationP(difference([...a.keys()]), differences, exact);
}
