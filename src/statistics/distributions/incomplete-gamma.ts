import { deviance } from './deviance.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * Regularised incomplete gamma function: P(a, x), the lower tail of the gamma distribution with shape a, or Q(a, x),
 * the upper; each to full relative precision where it is the smaller one.
 *
 * @param a above 0; need not be whole
 * @param x 0 or more
 *
 * Source: series of DLMF 8.11.4, continued fraction of DLMF 8.9.2 by the method of Lentz (Numerical Recipes, 6.2, from
 * memory); Loader (2000) for what stands before both. Checked against: R `pgamma`.
 */
export function incompleteGamma(a: number, x: number, tail: 'lower' | 'upper'): number {
  if (x === 0 || x === Infinity) return (x === 0) === (tail === 'lower') ? 0 : 1;
  const kernel = Math.exp(-stirlingError(a) - deviance(a, x)) / Math.sqrt(2 * Math.PI * a); // x^a e^−x / Γ(a + 1)
  const isBelow = x < a + 1;
  const part = kernel * (isBelow ? series(a, x) : a * fraction(a, x));
  return isBelow === (tail === 'lower') ? part : 1 - part;
}

function series(a: number, x: number): number {
  let [term, sum] = [1, 1];
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function fraction(a: number, x: number): number {
  let base = x + 1 - a;
  let above = Infinity;
  let below = 1 / base;
  let product = below;
  for (let n = 1; ; n++) {
    const part = -n * (n - a);
    base += 2;
    below = 1 / (base + part * below);
    above = base + part / above;
    const factor = below * above;
    product *= factor;
    if (!(Math.abs(factor - 1) > 1e-15)) return product;
  }
}
