import { pooledMeans as poolMeans } from '../../statistics/pooled-means.ts';
import type { Comparison } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Unit } from '../units/unit.ts';
import type { Context } from './context.ts';
import { germinatedIn } from './germinated-in.ts';
import { judged } from './judged.ts';
import { limitsOf } from './limits-of.ts';
import { makeComparison } from './make-comparison.ts';
import { meansIntervals } from './means-intervals.ts';
import { pooledNames } from './pooled-names.ts';
import { pooledTiming } from './pooled-timing.ts';

/** Means pooled over lots in which both treatments are replicated (methods 4), one variance for all their groups. */
export function pooledMeans(pairs: readonly Pair[], context: Context): Comparison {
  const { measure } = context.outcome;
  const lots = pairs.map(({ treated, control }) => ({
    treated: treated.units.map(valueOf),
    control: control.units.map(valueOf),
  }));
  const weights = lots.map(({ treated, control }) => weightOf(treated.length, control.length));
  const timing = pooledTiming(pairs, weights, measure);
  const names = { ...pooledNames(pairs, context), bracket: timing.bracket };
  const effects = { hedgesG: null, hodgesLehmann: null };
  const units = Math.min(names.units.treatment, names.units.control);
  const germinated = germinatedIn(
    measure,
    pairs.flatMap(({ treated, control }) => [...treated.units, ...control.units]),
  );
  const pooled = poolMeans(lots);
  if (pooled === null) {
    const estimate = weightedMean(
      lots.map(({ treated, control }) => average(treated) - average(control)),
      weights,
    );
    const nothing = { replicated: true, units, germinated, interval: null, ninety: null };
    return makeComparison({ ...names, estimate, effects, ...judged(nothing, context) });
  }
  const { interval, ninety, own, welch } = meansIntervals((level) => limitsOf(pooled, level), 'pooled-means', timing);
  const neverSame = timing.coarse && measure !== 't50';
  return makeComparison({
    ...names,
    estimate: pooled.difference,
    interval,
    effects,
    test: { method: 'pooled-t', statistic: pooled.statistic, df: pooled.df, p: pooled.p, pAdjusted: null },
    welch,
    lotsDiffer: pooled.lotsDiffer,
    ...judged({ replicated: true, units, germinated, interval, ninety, own, neverSame }, context),
  });
}

const valueOf = ({ value }: Unit): number => value ?? 0; // pairs with a missing value are not pooled
const weightOf = (treated: number, control: number): number => (treated * control) / (treated + control);
const average = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function weightedMean(values: readonly number[], weights: readonly number[]): number {
  const sum = values.reduce((so, value, index) => so + value * (weights[index] ?? 0), 0);
  return sum / weights.reduce((so, weight) => so + weight, 0);
}
