import { findRoot } from '../find-root.ts';
import { betaMixture } from './beta-mixture.ts';
import { chiScale } from './chi-scale.ts';
import { chiSquareCdf, chiSquareUpper } from './chi-square.ts';
import { stepOnLog } from './step-on-log.ts';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';

/** Beyond this noncentrality the mean over Z is the quicker one. */
const FAR = 40;

/**
 * Noncentral t distribution, lower tail P(T ≤ t) with T = (Z + ncp)/s, s = √(χ²/df): the mean over s of
 * Φ(t·s − ncp) or, for a large ncp, the mean over Z of a chi-square tail. Both by the trapezoid rule, which
 * converges exponentially here and, unlike the usual series, keeps its digits for any ncp and in small tails.
 *
 * @param df  degrees of freedom, above 0; need not be whole
 * @param ncp noncentrality
 * @throws {RangeError} when t or ncp is not finite or df not above 0
 *
 * Source: definition (Johnson, Kotz & Balakrishnan 1995, vol. 2, ch. 31, from memory).
 * Checked against: R `pt(t, df, ncp)` to 1e-7 (R itself warns of its precision there and stops at ncp 37); R
 * `integrate` in small tails and beyond.
 */
export function noncentralTCdf(t: number, df: number, ncp: number): number {
  if (!Number.isFinite(t) || !Number.isFinite(ncp) || !(df > 0 && df < Infinity)) {
    throw new RangeError(`noncentralTCdf needs finite t and ncp and df above 0, got ${t} on ${df} with ${ncp}`);
  }
  if (t === 0) return normalCdf(-ncp);
  if (Math.abs(ncp) > FAR) return meanOverNormal(t, df, ncp);
  const { values, weights } = chiScale(df, t, Math.abs(ncp));
  return values.reduce((sum, s, index) => sum + (weights[index] as number) * normalCdf(t * s - ncp), 0);
}

/** Over Z, where Z + ncp has the sign of ncp throughout. */
function meanOverNormal(t: number, df: number, ncp: number): number {
  const step = Math.min(1 / 8, Math.abs(ncp) / Math.sqrt(32 * df));
  const below = (top: number) => {
    if (top > 0 !== t > 0) return t > 0 ? 1 : 0;
    const square = df * (top / t) ** 2;
    return t > 0 ? chiSquareUpper(square, df) : chiSquareCdf(square, df);
  };
  let sum = 0;
  for (let z = -38; z <= 38; z += step) sum += Math.exp((-z * z) / 2) * below(z + ncp);
  return (step * sum) / Math.sqrt(2 * Math.PI);
}

/**
 * The noncentrality with P(T ≤ t) = p: limits of a confidence interval for a standardised difference.
 *
 * @param p strictly between 0 and 1
 * @throws {RangeError} outside that, or as noncentralTCdf
 *
 * Checked against: R `uniroot` on `pt(t, df, ncp)`.
 */
export function noncentralTLocation(t: number, df: number, p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`noncentralTLocation needs p between 0 and 1, got ${p}`);
  // Where a normal curve of the same spread has it (Abramowitz & Stegun 1964, 26.7.10).
  const spread = Math.sqrt(1 + (t * t) / (2 * df));
  const near = t * (1 - 1 / (4 * df)) - normalQuantile(p) * spread;
  return (
    (df >= 1 ? byTangents(t, df, p, near, Math.abs(near) + spread) : null) ?? byHalving(t, df, p, near, spread / 4)
  );
}

/**
 * Steps by slope and bend (Halley) on the logarithm of the smaller tail. It is concave in ncp from one degree of freedom on (it is the mean over
 * a log-concave density of a function log-concave in s and ncp together: Prékopa 1973), so that there is one
 * root and slopes lead to it.
 *
 * @returns null where they lead beyond `reach`, or the tail is too small for sums that are right to 16 digits of 1
 */
function byTangents(t: number, df: number, p: number, near: number, reach: number): number | null {
  if (reach > FAR || Math.min(p, 1 - p) < 1e-3) return null;
  if (t < 0) {
    const mirrored = byTangents(-t, df, 1 - p, -near, reach);
    return mirrored === null ? null : -mirrored;
  }
  for (let [round, ncp] = [0, near]; round < 20 && Math.abs(ncp) <= reach; round++) {
    const { tail, slope, bend } = lowerTail(t, df, ncp);
    const step = p < 0.5 ? stepOnLog(tail, slope, bend, p) : stepOnLog(1 - tail, -slope, -bend, 1 - p);
    ncp -= step;
    if (Math.abs(step) <= 1e-5) return ncp; // the next would be as small as its cube
  }
  return null;
}

/**
 * P(T ≤ t) for t of 0 or more, and its first two derivatives by the noncentrality, from tails of the beta distribution.
 *
 * Source: Lenth (1989), Appl. Stat. 38, 185–189, from memory; the derivatives are those of its weights.
 */
function lowerTail(t: number, df: number, ncp: number) {
  const [x, y] = [(t * t) / (df + t * t), df / (df + t * t)];
  const whole = betaMixture(x, y, df / 2, (ncp * ncp) / 2, 0);
  const half = betaMixture(x, y, df / 2, (ncp * ncp) / 2, 0.5);
  const both = (part: 'tails' | 'falls' | 'bends') => (whole[part] + Math.sign(ncp) * half[part]) / 2;
  const start = normalDensity(ncp) * y ** (df / 2);
  return {
    tail: normalCdf(-ncp) + both('tails'),
    slope: -start - ncp * both('falls'),
    bend: ncp * (start * (1 - (df / 2) * x) + ncp * both('bends')) - both('falls'),
  };
}

/** Between limits that are moved apart until they hold it. */
function byHalving(t: number, df: number, p: number, near: number, first: number): number {
  const excess = (ncp: number) => noncentralTCdf(t, df, ncp) - p; // falls with ncp
  let reach = first;
  while (excess(near - reach) < 0 || excess(near + reach) > 0) reach *= 2;
  return findRoot(excess, near - reach, near + reach);
}
