/**
 * Water lost between two weighings of the same seed, as a percentage of its mass at the first. It says
 * how much drier the seed became, not how dry it is.
 *
 * @param before net mass at the first weighing
 * @param after  net mass at the second; the same unit
 * @returns percent; negative where the seed took up water
 * @throws {RangeError} when `before` is not above 0
 *
 * Source: 100 (m₀ − m₁)/m₀, arithmetic. Checked against: R arithmetic.
 */
export function waterLost(before: number, after: number): number {
  if (!(before > 0)) throw new RangeError(`waterLost needs a mass above 0, got ${before}`);
  return (100 * (before - after)) / before;
}
