import { tQuantile } from './distributions/t.ts';
import { twoSidedPower } from './distributions/two-sided-power.ts';
import { unitsToSettle } from './units-to-settle.ts';

/**
 * Units a treatment that would show a difference of means: "about K trays would settle it".
 *
 * @param difference wanted, above 0, in the unit of `sd`
 * @param sd         of unit means, pooled over the groups, above 0
 * @returns a whole number from 2; null where even 1000 would not do
 * @throws {RangeError} outside those
 *
 * Source: methods.md 7 and 11. Checked against: R `power.t.test(strict = TRUE)`, rounded up.
 */
export function unitsForMean(difference: number, sd: number): number | null {
  const guess = 2 * ((1.96 + 0.84) * (sd / difference)) ** 2 + 1; // by the normal curve
  const isShown = (units: number) => {
    const df = 2 * units - 2;
    const ncp = difference / (sd * Math.sqrt(2 / units));
    const power = twoSidedPower(tQuantile(0.975, df), df, ncp);
    return power >= 0.8 ? difference : null;
  };
  return unitsToSettle(difference, isShown, guess);
}
