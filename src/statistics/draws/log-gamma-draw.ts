import { normalDraw } from './normal-draw.ts';

/**
 * The logarithm of one draw from a gamma distribution with scale 1. The logarithm, because with a small shape the draw
 * itself is often nearer to 0 than a number can be.
 *
 * @param shape above 0
 * @throws {RangeError} outside that
 *
 * Source: Marsaglia & Tsang (2000), ACM Trans. Math. Softw. 26, 363–372; below shape 1 by their U^(1/shape).
 * Checked against: R `pgamma`, share of draws below.
 */
export function logGammaDraw(shape: number, random: () => number): number {
  if (!(shape > 0 && shape < Infinity)) throw new RangeError(`logGammaDraw needs a shape above 0, got ${shape}`);
  if (shape < 1) return logGammaDraw(shape + 1, random) + Math.log(random()) / shape;
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normalDraw(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return Math.log(d * v);
  }
}
