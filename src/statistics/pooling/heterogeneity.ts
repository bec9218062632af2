import { chiSquareUpper } from '../distributions/chi-square.ts';
import { checkStudies, type Study } from './study.ts';

export interface Heterogeneity {
  /** Cochran's Q: how far the trials lie apart, in units of their own variances. */
  readonly q: { readonly statistic: number; readonly df: number; readonly p: number };
  /** Percent, 0 to 100: share of the variance of results that lies between trials. */
  readonly i2: number;
}

/**
 * How much trials differ beyond their standard errors: Cochran's Q, and I² from τ² and the typical variance of a trial.
 *
 * @param studies two or more
 * @param tau2    variance between trials
 * @throws {RangeError} with fewer than two, or where a standard error is not above 0
 *
 * Source: Higgins & Thompson (2002), Stat. Med. 21, 1539–1558, equation 9 for the typical variance (from memory).
 * Checked against: the formulas written out in R, `pchisq`; published fits (tests/reference/r/pooling.R).
 */
export function heterogeneity(studies: readonly Study[], tau2: number): Heterogeneity {
  checkStudies('heterogeneity', studies, 2);
  const rows = studies.map(({ estimate, se }) => ({ estimate, weight: 1 / se ** 2 }));
  const weights = rows.reduce((sum, { weight }) => sum + weight, 0);
  const squares = rows.reduce((sum, { weight }) => sum + weight ** 2, 0);
  const mean = rows.reduce((sum, { estimate, weight }) => sum + weight * estimate, 0) / weights;
  const statistic = rows.reduce((sum, { estimate, weight }) => sum + weight * (estimate - mean) ** 2, 0);
  const df = studies.length - 1;
  const typical = (df * weights) / (weights ** 2 - squares);
  return { q: { statistic, df, p: chiSquareUpper(statistic, df) }, i2: (100 * tau2) / (tau2 + typical) };
}
