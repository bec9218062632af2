import { detectableProportion } from './detectable-proportion.ts';
import { unitsToSettle } from './units-to-settle.ts';

/**
 * Units a treatment that would show a difference in germination: "about K trays would settle it".
 * ν is that of two groups of K units, 2(K − 1) + 1.
 *
 * @param difference proportion wanted, above 0
 * @param share      proportion of the control, strictly between 0 and 1
 * @param seeds      sown in each unit
 * @param used       φ*, 1 or more
 * @returns a whole number from 2; null where even 1000 would not do
 * @throws {RangeError} outside those
 *
 * Source: methods.md 7 and 11. Checked against: detectableProportion at K and at K − 1.
 */
export function unitsForProportion(
  difference: number,
  { share, seeds, used }: { share: number; seeds: number; used: number },
): number | null {
  const guess = (2 * used * share * (1 - share) * ((1.96 + 0.84) / difference) ** 2) / seeds + 1; // by the normal curve
  const shownWith = (units: number) =>
    detectableProportion({ share, control: units * seeds, treated: units * seeds, used, dfUsed: 2 * units - 1 });
  return unitsToSettle(difference, shownWith, guess);
}
