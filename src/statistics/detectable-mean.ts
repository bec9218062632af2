import { tQuantile } from './distributions/t.ts';
import { ncpForPower } from './distributions/two-sided-power.ts';

/** What a comparison of two means could see. `level` is the two-sided error rate (0.05). */
export interface MeanDesign {
  /** Standard deviation of unit means, pooled over the groups, above 0. */
  readonly sd: number;
  /** Units of each treatment. */
  readonly control: number;
  readonly treated: number;
  /** Degrees of freedom of the test (Welch's). */
  readonly df: number;
  readonly level?: number;
  readonly power?: number;
}

/**
 * Smallest difference of two means that a t test shows with the wanted power.
 *
 * @returns a difference in the unit of `sd`
 * @throws {RangeError} when sd, units or df are not above 0, or power is not above level
 *
 * Source: noncentral t, methods.md 7. Checked against: R `power.t.test(strict = TRUE)` for equal groups.
 */
export function detectableMean(design: MeanDesign): number {
  const { sd, control, treated, df, level = 0.05, power = 0.8 } = design;
  if (!(sd > 0 && control > 0 && treated > 0 && df > 0 && level > 0 && power > level && power < 1)) {
    throw new RangeError(`detectableMean needs sd, units and df above 0, got ${JSON.stringify(design)}`);
  }
  const ncp = ncpForPower(tQuantile(1 - level / 2, df), df, power);
  return ncp * sd * Math.sqrt(1 / control + 1 / treated);
}
