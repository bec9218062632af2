import { findRoot } from '../find-root.ts';
import { checkStudies, type Study } from './study.ts';

/** Points at which the slope of the likelihood is looked at, from far below the smallest variance to the bound. */
const POINTS = 200;
const LOWEST = 1e-7;

/**
 * Variance between trials, τ², by restricted maximum likelihood: the highest point of the restricted likelihood
 * over τ² ≥ 0. Rather than climbing from a start, which can stop at a lower hill, every change of sign of the slope
 * is found; none can lie beyond the larger of the largest se² and the squared range of the estimates.
 *
 * @param studies two or more
 * @returns in the unit of the estimates, squared; 0 where the trials differ no more than their standard errors allow
 * @throws {RangeError} with fewer than two, or where a standard error is not above 0
 *
 * Source: Viechtbauer (2005), J. Educ. Behav. Stat. 30, 261–293 (from memory), the likelihood of a normal model.
 * Checked against: R `optimise` of that likelihood; published fits (tests/reference/r/pooling.R).
 */
export function remlVariance(studies: readonly Study[]): number {
  checkStudies('remlVariance', studies, 2);
  const estimates = studies.map(({ estimate }) => estimate);
  const variances = studies.map(({ se }) => se ** 2);
  const range = Math.max(...estimates) - Math.min(...estimates);
  if (range === 0) return 0;
  const bound = Math.max(...variances, range ** 2);
  const lowest = LOWEST * Math.min(...variances, range ** 2);
  const points = [0, ...Array.from({ length: POINTS }, (_, i) => lowest * (bound / lowest) ** (i / (POINTS - 1)))];

  const slope = (tau2: number) => slopeAt(studies, tau2);
  const hills = points.slice(1).flatMap((to, index) => {
    const from = points[index] ?? 0;
    return slope(from) > 0 && slope(to) <= 0 ? [findRoot(slope, from, to)] : [];
  });
  return [0, ...hills].reduce((best, tau2) => (likelihood(studies, tau2) > likelihood(studies, best) ? tau2 : best));
}

function fit(studies: readonly Study[], tau2: number) {
  const rows = studies.map(({ estimate, se }) => ({ estimate, weight: 1 / (se ** 2 + tau2) }));
  const weights = rows.reduce((sum, { weight }) => sum + weight, 0);
  const mean = rows.reduce((sum, { estimate, weight }) => sum + weight * estimate, 0) / weights;
  return { rows, weights, mean };
}

/** Logarithm of the restricted likelihood, up to a constant. */
function likelihood(studies: readonly Study[], tau2: number): number {
  const { rows, weights, mean } = fit(studies, tau2);
  const sum = rows.reduce(
    (total, { estimate, weight }) => total + Math.log(weight) - weight * (estimate - mean) ** 2,
    0,
  );
  return (sum - Math.log(weights)) / 2;
}

/** Its derivative. */
function slopeAt(studies: readonly Study[], tau2: number): number {
  const { rows, weights, mean } = fit(studies, tau2);
  const squares = rows.reduce((sum, { weight }) => sum + weight ** 2, 0);
  const apart = rows.reduce((sum, { estimate, weight }) => sum + (weight * (estimate - mean)) ** 2, 0);
  return (apart + squares / weights - weights) / 2;
}
