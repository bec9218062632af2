/**
 * A number to so many digits after the point; a half goes away from zero. What binary arithmetic adds in the
 * thirteenth figure is taken off first: 100 × (0.705 − 0.19) is 51.5, not 51.49999999999999, so that a sentence
 * and a table, and a value and its mirror image, round alike.
 */
export function rounded(value: number, digits = 0): number {
  if (Number.isInteger(value) && Math.abs(value) < 1e9) return value + 0; // never -0
  const scale = 10 ** digits;
  const size = Math.round(Number((Math.abs(value) * scale).toPrecision(12))) / scale;
  return value < 0 ? -size : size;
}
