import { rangeQuantile } from './distributions/studentized-range.ts';
import { remembered } from './remembered.ts';

/**
 * Greatest range between replicates that seed luck alone explains (it is wider in about 1 of 40 or fewer).
 * Four or two replicates of 100 seeds: the public table. Anything else, and where the table has no row:
 * q(0.975; k, ∞) √(p q/n), which gives 36 of the table's 49 four-replicate rows and is never off by more than 1.
 *
 * @param share      mean proportion of the replicates, 0 to 1
 * @param replicates number of replicates, a whole number from 2
 * @param seeds      in each, above 0
 * @returns a proportion; null at 0 and 1, where there is no luck
 * @throws {RangeError} outside those
 *
 * Source: 7 CFR 201.55 (edition of 2015); formula after Miles (1963), Proc. Int. Seed Test. Assoc. 28, as given by
 * da Silva (2020), Seed Sci. Res. 30, 59–63. Checked against: the table row by row; R `qtukey(0.975, k, Inf)`.
 */
export function rangeTolerance(share: number, replicates: number, seeds: number): number | null {
  if (!(share >= 0 && share <= 1 && Number.isInteger(replicates) && replicates >= 2 && seeds > 0 && seeds < Infinity)) {
    throw new RangeError(
      `rangeTolerance needs a share, 2 replicates or more and seeds, got ${share}, ${replicates} of ${seeds}`,
    );
  }
  if (share === 0 || share === 1) return null;
  const percent = Math.round(100 * share);
  const row = 99 - (percent > 50 ? percent : 101 - percent); // the table's rows run from 99 (and 2) to 51 (and 50)
  const printed = seeds === 100 ? TABLE[replicates]?.[row] : undefined;
  if (typeof printed === 'number') return printed / 100;
  return quantileOf(0.975, replicates) * Math.sqrt((share * (1 - share)) / seeds);
}

/** q(p; k, ∞), found by a search of its own. */
const quantileOf = remembered(rangeQuantile);

/** Points of percentage by number of replicates, for a mean of 99 % down to 51 %. */
const TABLE: Readonly<Record<number, readonly (number | null)[]>> = {
  4: [
    5, 6, 7, 8, 9, 10, 10, 11, 11, 12, 12, 13, 13, 14, 14, 14, 15, 15, 15, 16, 16, 16, 17, 17, 17, 17, 17, 18, 18, 18,
    18, 18, 18, 19, 19, 19, 19, 19, 19, 19, 19, 19, 19, 19, 20, 20, 20, 20, 20,
  ],
  2: [
    null,
    null,
    6,
    6,
    7,
    8,
    8,
    9,
    9,
    9,
    10,
    10,
    11,
    11,
    11,
    11,
    12,
    12,
    12,
    13,
    13,
    13,
    13,
    13,
    14,
    14,
    14,
    14,
    14,
    14,
    14,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    15,
    16,
    16,
    16,
    16,
  ],
};
