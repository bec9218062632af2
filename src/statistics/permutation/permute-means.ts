import { mean } from 'simple-statistics';
import { checkValues } from '../check-values.ts';
import { permutationP, type Permutation } from './permutation-p.ts';
import { rearrange } from './rearrange.ts';

/**
 * Permutation test of the difference of two means of units: how often does it come out as large when the
 * treatments are dealt to the units anew?
 *
 * @param a    values of the units of one treatment
 * @param b    of the other
 * @param seed of the draws where there are too many arrangements to look at all
 * @returns null where the smallest p that can be had is above 0.05
 * @throws {RangeError} when a group is empty or holds what is not a finite number
 *
 * Source: Fisher (1935), The Design of Experiments; Phipson & Smyth (2010) for drawn arrangements.
 * Checked against: R `combn`, all arrangements.
 */
export function permuteMeans(
  a: readonly number[],
  b: readonly number[],
  seed: number | string = 'permutation',
): Permutation | null {
  checkValues('permuteMeans', a, 1);
  checkValues('permuteMeans', b, 1);
  const centre = mean([...a, ...b]);
  const values = [...a, ...b].map((value) => value - centre); // keeps digits where values are large
  const all = values.reduce((sum, value) => sum + value, 0);
  const difference = (chosen: readonly number[]) => {
    const sum = chosen.reduce((total, index) => total + (values[index] ?? 0), 0);
    return sum / a.length - (all - sum) / b.length;
  };
  const { differences, exact } = rearrange(values.length, a.length, difference, seed);
  return permutationP(difference([...a.keys()]), differences, exact);
}
