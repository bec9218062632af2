import { cumulate, type Check } from './checks.ts';

/**
 * Maguire's speed of germination: newly germinated over the day, summed, per 100 seeds sown. Mixes speed
 * and percentage. 0 where nothing germinated.
 *
 * @param sown number of seeds sown, above 0
 * @throws {RangeError} when `sown` is not above 0, days do not rise or a count is negative
 *
 * Source: Maguire (1962), Crop Sci. 2, 176–177. Checked against: R arithmetic.
 */
export function maguireRate(checks: readonly Check[], sown: number): number {
  if (!(sown > 0 && sown < Infinity)) throw new RangeError(`maguireRate needs a number of seeds sown, got ${sown}`);
  return (100 * cumulate('maguireRate', checks).reduce((sum, { day, newly }) => sum + newly / day, 0)) / sown;
}
