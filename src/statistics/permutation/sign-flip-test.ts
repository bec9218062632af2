import { checkValues } from '../check-values.ts';
import { seededRandom } from '../random.ts';
import { DRAWS, MOST_EXACT, permutationP, type Permutation } from './permutation-p.ts';

/**
 * Permutation test within pairs or blocks: how often does the mean difference come out as large when the
 * treatments swap places at random in every block? All 2^b sign patterns up to 15 blocks, else 20 000 drawn.
 *
 * @param differences one a block
 * @param seed        of the draws
 * @returns null where the smallest p that can be had is above 0.05 (always so below six blocks)
 * @throws {RangeError} when there is none, or what is not a finite number
 *
 * Source: Fisher (1935), The Design of Experiments, section 21; Phipson & Smyth (2010) for drawn patterns.
 * Checked against: Darwin's maize, 1726 of 32 768 (Fisher 1935); R `expand.grid`, all patterns.
 */
export function signFlipTest(differences: readonly number[], seed: number | string = 'sign-flip'): Permutation | null {
  checkValues('signFlipTest', differences, 1);
  const patterns = 2 ** differences.length;
  const exact = patterns <= MOST_EXACT;
  const random = seededRandom(seed);
  const flips = (pattern: number, block: number) => (exact ? ((pattern >> block) & 1) === 1 : random() < 0.5);
  const sums = Float64Array.from({ length: exact ? patterns : DRAWS }, (_, pattern) =>
    differences.reduce((sum, value, block) => sum + (flips(pattern, block) ? -value : value), 0),
  );
  const observed = differences.reduce((sum, value) => sum + value, 0);
  return permutationP(observed, sums, exact);
}
