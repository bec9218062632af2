import { findRoot } from '../find-root.ts';
import { chiScale, type ChiScale } from './chi-scale.ts';
import { noncentralTCdf } from './noncentral-t.ts';
import { stepOnLog } from './step-on-log.ts';
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
    const scale = chiScale(df, critical, reach);
    for (let [round, ncp] = [0, near]; round < 20 && ncp > 0 && ncp <= reach; round++) {
      const { chance, slope, bend } = missed(critical, ncp, scale);
      const step = stepOnLog(chance, slope, bend, 1 - power);
      ncp -= step;
      if (Math.abs(step) <= 1e-5) return ncp; // the next would be as small as its cube
    }
  }
  let high = reach;
  while (twoSidedPower(critical, df, high) < power) high *= 2;
  return findRoot((value) => twoSidedPower(critical, df, value) - power, 0, high);
}

/** P(|T| ≤ critical), and its first two derivatives by the noncentrality. */
function missed(critical: number, ncp: number, { values, weights }: ChiScale) {
  let chance = 0;
  let slope = 0;
  let bend = 0;
  for (let index = 0; index < values.length; index++) {
    const weight = weights[index] as number;
    const reach = critical * (values[index] as number);
    const [upper, lower] = [reach - ncp, -reach - ncp];
    chance += weight * (normalCdf(upper) - normalCdf(lower));
    const [below, above] = [weight * normalDensity(lower), weight * normalDensity(upper)];
    slope += below - above;
    bend += lower * below - upper * above;
  }
  return { chance, slope, bend };
}
