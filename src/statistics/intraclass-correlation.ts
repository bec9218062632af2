import { oneWayAnalysis } from './one-way-analysis.ts';

/**
 * How alike plants of the same unit are: 0, no more than plants of different units; 1, all alike. Slightly
 * negative estimates happen by chance and are given as they are.
 *
 * @param groups values of the plants, one array a unit
 * @returns null with fewer than two units, where no unit has two plants, or where nothing varies
 * @throws {RangeError} when a unit is empty or holds what is not a finite number
 *
 * Source: analysis-of-variance estimator (MSB − MSW)/(MSB + (n₀ − 1) MSW) with n₀ = (N − Σn²/N)/(a − 1) for
 * unequal sizes, Donner (1986), Int. Stat. Rev. 54, 67–82, from memory. Checked against: R `anova(lm(y ~ unit))`.
 */
export function intraclassCorrelation(groups: readonly (readonly number[])[]): number | null {
  const analysis = oneWayAnalysis(groups);
  if (analysis === null) return null;
  const { between, within, df } = analysis;
  const total = df[0] + df[1] + 1;
  const squares = groups.reduce((sum, group) => sum + group.length ** 2, 0);
  const size = (total - squares / total) / df[0];
  const whole = between + (size - 1) * within;
  return whole === 0 ? null : (between - within) / whole;
}
