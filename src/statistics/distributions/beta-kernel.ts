import { deviance } from './deviance.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * x^a y^b / B(a, b) as a function of x and y = 1 − x, which is given by itself because near 1 a difference has lost its
 * digits. What depends on a and b alone is worked out once.
 *
 * @param a above 0; need not be whole
 * @param b above 0; need not be whole
 *
 * Source: Loader (2000), Fast and accurate computation of binomial probabilities, from memory.
 * Checked against: R `dbeta`.
 */
export function betaKernel(a: number, b: number): (x: number, y: number) => number {
  const n = a + b;
  const error = stirlingError(n) - stirlingError(a) - stirlingError(b);
  const root = Math.sqrt(((a / n) * b) / (2 * Math.PI));
  return (x, y) => (x === 0 || y === 0 ? 0 : Math.exp(error - deviance(a, n * x) - deviance(b, n * y)) * root);
}
