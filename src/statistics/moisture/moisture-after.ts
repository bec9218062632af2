/**
 * Moisture content (wet basis) of seed that was weighed before and after, from its content at the first
 * weighing: the dry matter stays, so (100 − c₀) m₀ = (100 − c₁) m₁.
 *
 * @param initial percent wet basis at the first weighing
 * @param before  net mass at the first weighing
 * @param after   net mass at the second; the same unit
 * @returns percent wet basis; negative where more was lost than there was water, which is a mistake in the data
 * @throws {RangeError} when a mass is not above 0
 *
 * Source: conservation of dry matter, as in the target-mass formula (massAtMoisture). Checked against: R arithmetic.
 */
export function moistureAfter(initial: number, before: number, after: number): number {
  if (!(before > 0 && after > 0)) throw new RangeError(`moistureAfter needs masses above 0, got ${before}, ${after}`);
  return 100 - ((100 - initial) * before) / after;
}
