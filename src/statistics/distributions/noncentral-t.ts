import { findRoot } from '../find-root.ts';
import { chiSquareCdf, chiSquareUpper } from './chi-square.ts';
import { normalCdf, normalQuantile } from './normal.ts';

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
  return Math.abs(ncp) > 40 ? meanOverNormal(t, df, ncp) : meanOverChi(t, df, ncp);
}

/** Over u = log s². Steps fine enough for the density of u (sd about √(2/df)) and for the rise of Φ (2/|ncp| wide). */
function meanOverChi(t: number, df: number, ncp: number): number {
  const step = Math.min(Math.sqrt(2 / df), 1, 2 / (Math.abs(ncp) + 8)) / 1.5;
  let mass = 0;
  let below = 0;
  const add = (u: number): boolean => {
    const scale = Math.exp(u / 2);
    const logDensity = (df / 2) * (u + 1 - scale * scale);
    if (logDensity < -50) return false;
    const density = Math.exp(logDensity);
    mass += density;
    below += density * normalCdf(t * scale - ncp);
    return true;
  };
  for (let k = 0; add(k * step); k++);
  for (let k = 1; add(-k * step); k++);
  return below / mass;
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
  const excess = (ncp: number) => noncentralTCdf(t, df, ncp) - p; // falls with ncp
  // Close around where a normal curve of the same spread has it; wider where that does not hold it.
  const spread = Math.sqrt(1 + (t * t) / (2 * df));
  const near = t - normalQuantile(p) * spread;
  let reach = spread / 4;
  while (excess(near - reach) < 0 || excess(near + reach) > 0) reach *= 2;
  return findRoot(excess, near - reach, near + reach);
}
