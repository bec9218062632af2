/**
 * Moisture content on the dry basis (percent of the dry mass) of a wet-basis content (percent of the
 * fresh mass).
 *
 * @param wet percent on the wet basis, 0 up to but not including 100
 * @throws {RangeError} outside that
 *
 * Source: d = 100 w/(100 − w), arithmetic of the definitions. Checked against: R arithmetic.
 */
export function dryBasis(wet: number): number {
  if (!(wet >= 0 && wet < 100)) throw new RangeError(`dryBasis needs a percentage from 0 to below 100, got ${wet}`);
  return (100 * wet) / (100 - wet);
}
