import { detectableMean } from './detectable-mean.ts';
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
  return unitsToSettle(difference, (units) =>
    detectableMean({ sd, control: units, treated: units, df: 2 * units - 2 }),
  );
}
