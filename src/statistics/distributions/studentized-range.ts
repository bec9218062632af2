import { findRoot } from '../find-root.ts';
import { normalCdf } from './normal.ts';

/**
 * Distribution of the range of `k` independent standard normal values (the studentized range with
 * infinite degrees of freedom): P(range ≤ q) = k ∫ φ(x) [Φ(x) − Φ(x − q)]^(k − 1) dx, by the trapezoid
 * rule, which converges exponentially here.
 *
 * @param q 0 or more
 * @param k number of values, a whole number from 2
 * @throws {RangeError} outside those
 *
 * Source: Tippett (1925), Biometrika 17, 364–387, from memory. Checked against: R `ptukey(q, k, Inf)`, and beyond four values, where that loses digits, R `integrate`.
 */
export function rangeCdf(q: number, k: number): number {
  if (!(q >= 0 && Number.isInteger(k) && k >= 2)) {
    throw new RangeError(`rangeCdf needs 0 or more and 2 values or more, got ${q} of ${k}`);
  }
  const step = 1 / 16;
  let sum = 0;
  for (let x = -9; x <= 9; x += step) {
    sum += Math.exp((-x * x) / 2) * (normalCdf(x) - normalCdf(x - q)) ** (k - 1);
  }
  return Math.min(1, (k * step * sum) / Math.sqrt(2 * Math.PI));
}

/**
 * The q with P(range ≤ q) = p.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that, or when k is not a whole number from 2
 *
 * Checked against: R `qtukey(p, k, Inf)`, which is itself good to 1e-4 only, and R `ptukey` of the result.
 */
export function rangeQuantile(p: number, k: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`rangeQuantile needs a probability between 0 and 1, got ${p}`);
  let high = 8;
  while (rangeCdf(high, k) < p) high *= 2;
  return findRoot((q) => rangeCdf(q, k) - p, 0, high);
}
