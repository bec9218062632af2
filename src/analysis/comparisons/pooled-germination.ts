import { pooledProportions } from '../../statistics/pooled-proportions.ts';
import type { Comparison } from '../analysis.ts';
import { countedUnits } from '../units/counted-units.ts';
import type { Pair } from '../units/lot-units.ts';
import { total } from '../units/total.ts';
import type { Context } from './context.ts';
import { judged } from './judged.ts';
import { limitsOf } from './limits-of.ts';
import { lotDispersion } from './lot-dispersion.ts';
import { makeComparison } from './make-comparison.ts';
import { percent } from './percent.ts';
import { pooledNames } from './pooled-names.ts';

/**
 * Germination pooled over lots in which both treatments are replicated (methods 4). One dispersion from
 * all groups of these lots; the difference is cut at ±100 points.
 */
export function pooledGermination(pairs: readonly Pair[], context: Context): Comparison {
  const lots = pairs.map(({ treated, control }) => ({
    treated: total(countedUnits(treated.units) ?? []),
    control: total(countedUnits(control.units) ?? []),
  }));
  const dispersion = lotDispersion(pairs.flatMap(({ treated, control, others }) => [treated, control, ...others]));
  const pooled = pooledProportions(lots, dispersion);
  const limits = (level: number) => {
    const { lower, upper } = limitsOf(pooled, level);
    return percent({ lower: Math.max(-1, lower), upper: Math.min(1, upper) });
  };
  const interval = { level: 0.95, ...limits(0.95), method: 'mantel-haenszel' as const };
  const names = pooledNames(pairs, context);
  const germinated = lots.reduce((sum, lot) => sum + lot.treated.count + lot.control.count, 0);

  return makeComparison({
    ...names,
    estimate: 100 * pooled.difference,
    interval,
    effects: { riskRatio: null, oddsRatio: null, cohensH: null },
    dispersion,
    test: { method: 'pooled-f', statistic: pooled.statistic ** 2, df: [1, pooled.df], p: pooled.p, pAdjusted: null },
    lotsDiffer: pooled.lotsDiffer,
    ...judged(
      {
        replicated: true,
        units: Math.min(names.units.treatment, names.units.control),
        germinated,
        interval,
        ninety: limits(0.9),
      },
      context,
    ),
  });
}
