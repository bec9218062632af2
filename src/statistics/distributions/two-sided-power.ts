import { findRoot } from '../find-root.ts';
import { betaMixture } from './beta-mixture.ts';
import { noncentralTCdf } from './noncentral-t.ts';
import { normalQuantile } from './normal.ts';
import { stepOnLog } from './step-on-log.ts';

/** Beyond this noncentrality, and below one degree of freedom, the slower way holds. */
const FAR = 40;

/**
 * Chance P(|T| > critical) that a two-sided t test shows a difference, T noncentral t.
 *
 * @param critical above 0
 * @param df       degrees of freedom, above 0; need not be whole
 * @param ncp      noncentrality, 0 or more
 * @throws {RangeError} as noncentralTCdf
 *
 * Checked against: R `power.t.test(strict = TRUE)`, through its callers; noncentralTCdf.
 */
export function twoSidedPower(critical: number, df: number, ncp: number): number {
  if (Number.isFinite(critical) && ncp >= 0 && ncp <= FAR && df > 0 && df < Infinity) {
    return 1 - missed(critical, df, ncp).chance;
  }
  return 1 - noncentralTCdf(critical, df, ncp) + noncentralTCdf(-critical, df, ncp);
}

/**
 * The noncentrality with which a two-sided t test shows a difference with the wanted power.
 *
 * @param critical above 0
 * @param power    above P(|T| > critical) without noncentrality, below 1
 *
 * Steps by slope and bend (Halley) on the logarithm of the chance to miss it, which is concave from one degree of freedom on: |Z + ncp| ≤
 * critical·s is a convex set and the density of s log-concave (Prékopa 1973), so that there is one root
 * and slopes lead to it.
 */
export function ncpForPower(critical: number, df: number, power: number): number {
  // Where a normal curve of the same spread has it (Abramowitz & Stegun 1964, 26.7.10).
  const spread = Math.sqrt(1 + (critical * critical) / (2 * df));
  const near = Math.max(critical / 2, critical * (1 - 1 / (4 * df)) + normalQuantile(power) * spread);
  const reach = near + spread;
  if (df >= 1 && reach <= FAR) {
    for (let [round, ncp] = [0, near]; round < 20 && ncp > 0 && ncp <= reach; round++) {
      const { chance, slope, bend } = missed(critical, df, ncp);
      const step = stepOnLog(chance, slope, bend, 1 - power);
      ncp -= step;
      if (Math.abs(step) <= 1e-5) return ncp; // the next would be as small as its cube
    }
  }
  let high = reach;
  while (twoSidedPower(critical, df, high) < power) high *= 2;
  return findRoot((value) => twoSidedPower(critical, df, value) - power, 0, high);
}

/**
 * P(|T| ≤ critical), and its first two derivatives by the noncentrality. T² is noncentral F on 1 and df: a beta tail
 * whose first parameter is ½ and a Poisson number.
 */
function missed(critical: number, df: number, ncp: number) {
  const square = critical * critical;
  const { tails, falls, bends } = betaMixture(square / (df + square), df / (df + square), df / 2, (ncp * ncp) / 2, 0);
  return { chance: tails, slope: -ncp * falls, bend: ncp * ncp * bends - falls };
}
