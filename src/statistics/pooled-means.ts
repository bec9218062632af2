import { mean } from 'simple-statistics';
import { checkValues } from './check-values.ts';
import { fUpper } from './distributions/f.ts';
import { tTwoSided } from './distributions/t.ts';
import type { Pooled } from './pooled-proportions.ts';
import { variance } from './variance.ts';

/** Values of the units of one lot under the two treatments, two or more of each. */
export interface LotValues {
  readonly treated: readonly number[];
  readonly control: readonly number[];
}

/**
 * Difference of two means of units, treated minus control, pooled over seed lots with weights
 * n_t n_c/(n_t + n_c) and one variance within lot and treatment. Its interval is D ± t se on Σ(k − 1).
 *
 * @param lots two or more
 * @returns null where no group of any lot varies
 * @throws {RangeError} with fewer than two lots, or fewer than two finite values in a group
 *
 * Source: methods.md 4; the treatment effect of the linear model lot + treatment, and the F of lot × treatment against
 * the variance within. Checked against: R `lm`, `anova`.
 */
export function pooledMeans(lots: readonly LotValues[]): Pooled | null {
  if (lots.length < 2) throw new RangeError(`pooledMeans needs two lots or more, got ${lots.length}`);
  const groups = lots.flatMap(({ treated, control }) => [treated, control]);
  for (const group of groups) checkValues('pooledMeans', group, 2);
  const df = groups.reduce((sum, group) => sum + group.length - 1, 0);
  const within = groups.reduce((sum, group) => sum + (group.length - 1) * variance(group), 0) / df;
  if (within === 0) return null;

  const rows = lots.map(({ treated, control }) => ({
    difference: mean([...treated]) - mean([...control]),
    weight: (treated.length * control.length) / (treated.length + control.length),
  }));
  const weights = rows.reduce((sum, row) => sum + row.weight, 0);
  const difference = rows.reduce((sum, row) => sum + row.weight * row.difference, 0) / weights;
  const se = Math.sqrt(within / weights);
  const statistic = difference / se;

  const apart =
    rows.reduce((sum, row) => sum + row.weight * (row.difference - difference) ** 2, 0) / ((lots.length - 1) * within);
  const lotsDf = [lots.length - 1, df] as const;
  return {
    difference,
    se,
    df,
    statistic,
    p: tTwoSided(statistic, df),
    lotsDiffer: { statistic: apart, df: lotsDf, p: fUpper(apart, ...lotsDf) },
  };
}
