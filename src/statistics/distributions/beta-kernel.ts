import { deviance } from './deviance.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * x^a y^b / B(a, b) with y = 1 − x, given by itself because near 1 a difference has lost its digits.
 *
 * @param a above 0; need not be whole
 * @param b above 0; need not be whole
 *
 * Source: Loader (2000), Fast and accurate computation of binomial probabilities, from memory.
 * Checked against: R `dbeta`.
 */
export function betaKernel(x: number, y: number, a: number, b: number): number {
  if (x === 0 || y === 0) return 0;
  const n = a + b;
  const log = stirlingError(n) - stirlingError(a) - stirlingError(b) - deviance(a, n * x) - deviance(b, n * y);
  return Math.exp(log) * Math.sqrt(((a / n) * b) / (2 * Math.PI));
}
