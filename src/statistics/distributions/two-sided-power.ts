import { findRoot } from '../find-root.ts';
import { chiScale, type ChiScale } from './chi-scale.ts';
import { noncentralTCdf } from './noncentral-t.ts';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';

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
    return 1 - missed(critical, ncp, chiScale(df, critical, ncp)).chance;
  }
  return 1 - noncentralTCdf(critical, df, ncp) + noncentralTCdf(-critical, df, ncp);
}

/**
 * The noncentrality with which a two-sided t test shows a difference with the wanted power.
 *
 * @param critical above 0
 * @param power    above P(|T| > critical) without noncentrality, below 1
 *
 * Newton steps on the logarithm of the chance to miss it, which is concave from one degree of freedom on: |Z + ncp| ≤
 * critical·s is a convex set and the density of s log-concave (Prékopa 1973). From the second step on they near
 * the root from one side.
 */
export function ncpForPower(critical: number, df: number, power: number): number {
  // Where a normal curve of the same spread has it.
  const spread = Math.sqrt(1 + (critical * critical) / (2 * df));
  const near = Math.max(critical / 2, critical + normalQuantile(power) * spread);
  const reach = near + spread;
  if (df >= 1 && reach <= FAR) {
    const scale = chiScale(df, critical, reach);
    for (let [round, ncp] = [0, near]; round < 20 && ncp > 0 && ncp <= reach; round++) {
      const { chance, slope } = missed(critical, ncp, scale);
      const step = (Math.log(chance / (1 - power)) * chance) / slope;
      ncp -= step;
      if (Math.abs(step) <= 1e-8) return ncp; // the next would be as small as its square
    }
  }
  let high = reach;
  while (twoSidedPower(critical, df, high) < power) high *= 2;
  return findRoot((value) => twoSidedPower(critical, df, value) - power, 0, high);
}

/** P(|T| ≤ critical), and how it changes with the noncentrality. */
function missed(critical: number, ncp: number, { values, weights }: ChiScale): { chance: number; slope: number } {
  let chance = 0;
  let slope = 0;
  for (const [index, s] of values.entries()) {
    const weight = weights[index] as number;
    const [upper, lower] = [critical * s - ncp, -critical * s - ncp];
    chance += weight * (normalCdf(upper) - normalCdf(lower));
    slope += weight * (normalDensity(lower) - normalDensity(upper));
  }
  return { chance, slope };
}
