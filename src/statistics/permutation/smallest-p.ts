import { DRAWS, MOST_EXACT } from './permutation-p.ts';

/**
 * The smallest two-sided p that shuffling can reach with so many units of each of two treatments: every arrangement
 * has a mirror image as extreme, so 2 in all that there are; where too many to look at all, 1 in those drawn and one.
 *
 * @param units    of each treatment, or blocks with one of each; a whole number from 1
 * @param inBlocks treatments swap places within blocks only
 * @throws {RangeError} outside those
 *
 * Source: counting; Phipson & Smyth (2010) for drawn arrangements. Checked against: permuteMeans, signFlipTest and
 * R `choose`.
 */
export function smallestP(units: number, inBlocks = false): number {
  if (!(Number.isInteger(units) && units >= 1)) throw new RangeError(`smallestP needs units of each, got ${units}`);
  let arrangements = 1;
  for (let i = 1; i <= units; i++) arrangements *= inBlocks ? 2 : (units + i) / i;
  return arrangements > MOST_EXACT + 0.5 ? 1 / (DRAWS + 1) : 2 / Math.round(arrangements);
}
