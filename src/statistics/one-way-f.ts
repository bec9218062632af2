import { fUpper } from './distributions/f.ts';
import { oneWayAnalysis } from './one-way-analysis.ts';

/**
 * Do several treatments differ at all? Overall F test of means of units.
 *
 * @param groups values of the units, one array a treatment
 * @returns null with fewer than two groups, without replication, or where no group varies
 * @throws {RangeError} when a group is empty or holds what is not a finite number
 *
 * Source: Fisher (1925). Checked against: R `anova(lm(y ~ group))`; certified values of NIST StRD.
 */
export function oneWayF(
  groups: readonly (readonly number[])[],
): { statistic: number; df: readonly [number, number]; p: number } | null {
  const analysis = oneWayAnalysis(groups);
  if (analysis === null || analysis.within === 0) return null;
  const statistic = analysis.between / analysis.within;
  return { statistic, df: analysis.df, p: fUpper(statistic, ...analysis.df) };
}
