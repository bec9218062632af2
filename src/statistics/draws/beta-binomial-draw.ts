import { binomialDraw } from './binomial-draw.ts';
import { logGammaDraw } from './log-gamma-draw.ts';

/**
 * One draw of a tray: how many of its seeds come up where trays vary. Each tray has a share of its own, drawn from a
 * beta distribution, so that the variance of counts is `phi` times that of seed luck alone.
 *
 * @param seeds in the tray, a whole number above 0
 * @param share expected, 0 to 1
 * @param phi   from 1 (seed luck alone) to below `seeds`; φ = 1 + (seeds − 1)ρ
 * @throws {RangeError} outside those
 *
 * Source: beta-binomial, Skellam (1948), J. R. Stat. Soc. B 10, 257–261; φ and ρ: Williams (1982), Appl. Stat. 31,
 * 144–148, from memory. Checked against: R, the distribution by `beta()` and `choose()`, share of draws below.
 */
export function betaBinomialDraw(seeds: number, share: number, phi: number, random: () => number): number {
  if (!(share >= 0 && share <= 1 && (phi === 1 || (phi > 1 && phi < seeds)))) {
    throw new RangeError(`betaBinomialDraw needs a share and φ below the ${seeds} seeds, got ${share} and ${phi}`);
  }
  if (phi === 1 || share === 0 || share === 1) return binomialDraw(seeds, share, random);
  const rho = (phi - 1) / (seeds - 1);
  const sum = (1 - rho) / rho;
  const up = logGammaDraw(share * sum, random);
  const down = logGammaDraw((1 - share) * sum, random);
  return binomialDraw(seeds, 1 / (1 + Math.exp(down - up)), random);
}
