import { betaKernel } from './beta-kernel.ts';

/**
 * Regularised incomplete beta function I_x(a, b), the lower tail of the beta distribution, to full relative
 * precision however small it is. Its own few lines rather than a library's, so that a page that works a trial
 * out in the reader's browser stays small.
 *
 * @param x 0 to 1
 * @param y 1 − x, given by itself because near 1 a difference has lost its digits
 * @param a above 0; need not be whole
 * @param b above 0; need not be whole
 * @param kernel `betaKernel(a, b)(x, y)`, where it is known already
 *
 * Source: continued fraction of DLMF 8.17.22, by the method of Lentz (Numerical Recipes, 6.4, from memory).
 * Checked against: R `pbeta`.
 */
export function incompleteBeta(x: number, y: number, a: number, b: number, kernel = betaKernel(a, b)(x, y)): number {
  if (x <= 0 || y <= 0) return x <= 0 ? 0 : 1;
  // The fraction converges fast below the mean only.
  return x * (a + b + 2) < a + 1 ? (kernel * fraction(x, a, b)) / a : 1 - (kernel * fraction(y, b, a)) / b;
}

function fraction(x: number, a: number, b: number): number {
  let above = 1;
  let below = 1 / (1 - ((a + b) * x) / (a + 1));
  let product = below;
  for (let m = 1; ; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    below = 1 / (1 + even * below);
    above = 1 + even / above;
    product *= below * above;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    below = 1 / (1 + odd * below);
    above = 1 + odd / above;
    const factor = below * above;
    product *= factor;
    if (!(Math.abs(factor - 1) > 1e-15)) return product;
  }
}
