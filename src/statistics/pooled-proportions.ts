import type { Pair } from './block-dispersion.ts';
import { checkCounted, type Counted } from './counted.ts';
import { fUpper } from './distributions/f.ts';
import { tTwoSided } from './distributions/t.ts';
import type { TTest } from './welch-t.ts';

/** A comparison pooled over lots, and the test of whether the lots differ in it. */
export interface Pooled extends TTest {
  readonly lotsDiffer: { readonly statistic: number; readonly df: readonly [number, number]; readonly p: number };
}

/**
 * Difference of two proportions, treated minus control, pooled over seed lots with weights n_t n_c/(n_t + n_c).
 * Its interval is D ± t_ν se.
 *
 * @param lots       totals of each lot, two lots or more
 * @param dispersion φ* and ν from the X² and df of all these lots together
 * @returns proportions
 * @throws {RangeError} with fewer than two lots, or a group that is not a count out of seeds
 *
 * Source: weights of Mantel & Haenszel (1959); variance after Greenland & Robins (1985) with p̃ = (x + ½)/(n + 1)
 * and φ*, methods.md 4. Checked against: R arithmetic, vectorised; D of UCBAdmissions.
 */
export function pooledProportions(lots: readonly Pair[], dispersion: { used: number; dfUsed: number }): Pooled {
  if (lots.length < 2) throw new RangeError(`pooledProportions needs two lots or more, got ${lots.length}`);
  const { used, dfUsed } = dispersion;
  if (!(used >= 1 && dfUsed > 0))
    throw new RangeError(`pooledProportions needs φ* of 1 or more, got ${used} on ${dfUsed}`);

  const rows = lots.map(({ treated, control }) => {
    checkCounted('pooledProportions', treated);
    checkCounted('pooledProportions', control);
    return {
      difference: treated.count / treated.seeds - control.count / control.seeds,
      weight: (treated.seeds * control.seeds) / (treated.seeds + control.seeds),
      luck: luckOf(treated) + luckOf(control),
    };
  });
  const total = (value: (row: (typeof rows)[number]) => number) => rows.reduce((sum, row) => sum + value(row), 0);

  const weights = total((row) => row.weight);
  const difference = total((row) => row.weight * row.difference) / weights;
  const se = Math.sqrt(used * total((row) => row.weight ** 2 * row.luck)) / weights;
  const statistic = difference / se;

  const centre = total((row) => row.difference / row.luck) / total((row) => 1 / row.luck);
  const apart = total((row) => (row.difference - centre) ** 2 / row.luck) / ((lots.length - 1) * used);
  const df = [lots.length - 1, dfUsed] as const;
  return {
    difference,
    se,
    df: dfUsed,
    statistic,
    p: tTwoSided(statistic, dfUsed),
    lotsDiffer: { statistic: apart, df, p: fUpper(apart, ...df) },
  };
}

/** Variance that seed luck gives a share, never 0. */
function luckOf({ count, seeds }: Counted): number {
  const share = (count + 0.5) / (seeds + 1);
  return (share * (1 - share)) / seeds;
}
