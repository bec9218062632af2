/**
 * Halley's step towards where a function has a value, taken on its logarithm: x − step is nearer, and close to the root the
 * error falls to its cube.
 *
 * @param value above 0, at x
 * @param slope its first derivative there, not 0
 * @param bend  its second derivative there
 * @param goal  value wanted, above 0
 */
export function stepOnLog(value: number, slope: number, bend: number, goal: number): number {
  const gap = Math.log(value / goal);
  const rise = slope / value;
  const turn = bend / value - rise * rise;
  const newton = gap / rise;
  return newton / Math.max(0.5, 1 - (newton * turn) / (2 * rise)); // far away the slope is to lead
}
