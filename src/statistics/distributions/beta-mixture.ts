import { betaKernel } from './beta-kernel.ts';
import { deviance } from './deviance.ts';
import { incompleteBeta } from './incomplete-beta.ts';
import { stirlingError } from './stirling-error.ts';

/** Sums over n = shift, shift + 1, … of what n weighs times … */
export interface BetaMixture {
  /** … its tail I_x(n + ½, b). */
  readonly tails: number;
  /** … by how much the tail of n + 1 is smaller. */
  readonly falls: number;
  /** … by how much the fall of n + 1 is smaller. */
  readonly bends: number;
}

/**
 * What noncentral t is made of: tails of the beta distribution that weigh e^−mean mean^n / Γ(n + 1), which for whole n are the
 * probabilities of a Poisson number. Summed from the n with the most weight downwards, where tails grow, and upwards, where
 * they become nothing, so that no digits are lost on the way.
 *
 * @param x     0 up to 1
 * @param y     1 − x, given by itself because near 1 a difference has lost its digits
 * @param b     above 0; need not be whole
 * @param mean  0 or more; it takes some mean + 9 √mean steps
 * @param shift where n begins
 *
 * Source: Benton & Krishnamoorthy (2003), Comput. Stat. Data Anal. 43, 249–267, from memory; I_x(a, b) − I_x(a + 1, b) is
 * DLMF 8.17.20. Checked against: R `pt(t, df, ncp)`, through its callers.
 */
export function betaMixture(x: number, y: number, b: number, mean: number, shift: 0 | 0.5): BetaMixture {
  let [tails, falls, bends] = [0, 0, 0];
  if (x === 0) return { tails, falls, bends };
  const rise = (n: number) => (x * (n + 0.5 + b)) / (n + 1.5); // the fall at n + 1 over that at n
  const most = Math.floor(mean) + shift;
  const kernel = betaKernel(most + 0.5, b)(x, y);
  const first = {
    weight:
      most === 0
        ? Math.exp(-mean)
        : Math.exp(-stirlingError(most) - deviance(most, mean)) / Math.sqrt(2 * Math.PI * most),
    tail: incompleteBeta(x, y, most + 0.5, b, kernel),
    fall: kernel / (most + 0.5),
  };

  let { weight, tail, fall } = first;
  for (let n = most; n >= 0; n--) {
    tails += weight * tail;
    falls += weight * fall;
    bends += weight * fall * (1 - rise(n));
    weight *= n / mean;
    fall /= rise(n - 1);
    tail += fall;
  }
  ({ weight, tail, fall } = first);
  for (let n = most; weight > 1e-18 * first.weight; n++) {
    weight *= mean / (n + 1);
    tail -= fall;
    fall *= rise(n);
    tails += weight * tail;
    falls += weight * fall;
    bends += weight * fall * (1 - rise(n + 1));
  }
  return { tails, falls, bends };
}
