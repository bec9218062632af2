/**
 * Moisture content on the wet (fresh) basis: the water that an oven drives out, as a percentage of the
 * seed's mass before drying. This is the basis that seed testing and genebanks use.
 *
 * @param fresh     mass before the oven, container included
 * @param dry       mass after the oven, container included; the same unit
 * @param container mass of the empty container, 0 where the scale was set to zero with it
 * @returns percent, 0 to 100 unless the seed gained mass
 * @throws {RangeError} when no seed is left after taking off the container
 *
 * Source: 100 (M2 − M3)/(M2 − M1), the form of ISTA Rules chapter 9 (from memory); read as "((fresh − dry)/fresh) × 100"
 * in the glossary of the CPC Rare Plant Academy. Checked against: R arithmetic.
 */
export function wetBasis(fresh: number, dry: number, container = 0): number {
  if (!(fresh > container))
    throw new RangeError(`wetBasis needs a mass above the container's, got ${fresh}, ${container}`);
  return (100 * (fresh - dry)) / (fresh - container);
}
