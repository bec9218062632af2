import { checkCounted, type Counted } from './counted.ts';

/** Pearson's X² of units within groups, its degrees of freedom, and their ratio φ (null where df is 0). */
export interface Dispersion {
  readonly statistic: number;
  readonly df: number;
  readonly phi: number | null;
}

/**
 * How much more the units of the same group differ than seed luck alone would make them: φ near 1, no
 * more; φ = 4, four times the variance. Groups at 0 or 100 % carry no information on it and are left out
 * of both X² and df.
 *
 * @param groups one array of units a group
 * @throws {RangeError} when a unit is not a count out of seeds
 *
 * Source: methods.md 2; Pearson's X² with df Σ(k − 1), McCullagh & Nelder (1989) section 4.5, from memory.
 * Checked against: R, Pearson residuals of `glm(family = binomial)` with one mean a group.
 */
export function pearsonDispersion(groups: readonly (readonly Counted[])[]): Dispersion {
  let statistic = 0;
  let df = 0;
  for (const units of groups) {
    for (const unit of units) checkCounted('pearsonDispersion', unit);
    const count = units.reduce((sum, unit) => sum + unit.count, 0);
    const seeds = units.reduce((sum, unit) => sum + unit.seeds, 0);
    if (count === 0 || count === seeds) continue;

    const share = count / seeds;
    df += units.length - 1;
    if (units.length === 1) continue; // its residual is zero but for rounding
    for (const unit of units) statistic += (unit.count - unit.seeds * share) ** 2 / (unit.seeds * share * (1 - share));
  }
  return { statistic, df, phi: df === 0 ? null : statistic / df };
}
