/**
 * The mass that seed will have when it has reached a wanted moisture content: what to wait for on the scale.
 *
 * @param mass   net mass now
 * @param now    percent wet basis now, below 100
 * @param wanted percent wet basis wanted, below 100
 * @returns mass in the unit of `mass`
 * @throws {RangeError} when `mass` is not above 0 or a percentage is outside 0 to below 100
 *
 * Source: m (100 − c₀)/(100 − c), Manual of Seed Handling in Genebanks (2006), from memory. Checked against: R arithmetic.
 */
export function massAtMoisture(mass: number, now: number, wanted: number): number {
  const isContent = (percent: number) => percent >= 0 && percent < 100;
  if (!(mass > 0) || !isContent(now) || !isContent(wanted)) {
    throw new RangeError(`massAtMoisture needs a mass and two percentages below 100, got ${mass}, ${now}, ${wanted}`);
  }
  return (mass * (100 - now)) / (100 - wanted);
}
