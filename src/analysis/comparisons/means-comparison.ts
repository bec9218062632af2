import { mean } from 'simple-statistics';
import { detectableMean } from '../../statistics/detectable-mean.ts';
import { hedgesG } from '../../statistics/hedges-g.ts';
import { hodgesLehmann } from '../../statistics/hodges-lehmann.ts';
import { permuteMeans } from '../../statistics/permutation/permute-means.ts';
import { unitsForMean } from '../../statistics/units-for-mean.ts';
import { variance } from '../../statistics/variance.ts';
import { welchT } from '../../statistics/welch-t.ts';
import type { Comparison } from '../analysis.ts';
import { isTime } from '../measures/is-time.ts';
import type { Pair } from '../units/lot-units.ts';
import { pairedBlocks } from '../units/paired-blocks.ts';
import type { Unit } from '../units/unit.ts';
import type { Context } from './context.ts';
import { germinatedIn } from './germinated-in.ts';
import { inOneOrder } from './in-one-order.ts';
import { judged } from './judged.ts';
import { limitsOf } from './limits-of.ts';
import { makeComparison } from './make-comparison.ts';
import { meansBlocks } from './means-blocks.ts';
import { meansIntervals } from './means-intervals.ts';
import { pairNames } from './pair-names.ts';
import { timingOf } from './timing-of.ts';

/**
 * Means of units of two treatments in one lot: traits, times, rates, moisture (methods 5 and 6, blocks 3).
 * Differences are treatment minus control, in the unit of the outcome.
 *
 * @returns null where a rate per 100 seeds sown is wanted and seeds sown are not known
 */
export function meansComparison(pair: Pair, context: Context): Comparison | null {
  const { measure } = context.outcome;
  const { treated, control } = pair;
  const [t, c] = [valuesOf(treated.units), valuesOf(control.units)];
  if ((t === null || c === null) && !isTime(measure)) return null;

  const units = Math.min(treated.units.length, control.units.length);
  const germinated = germinatedIn(measure, [...treated.units, ...control.units]);
  const timing = timingOf(measure, treated, control);
  const nothing = { replicated: units > 1, units, germinated, interval: null, ninety: null };
  const names = { ...pairNames(pair, context), bracket: timing.bracket };
  // Half before the first check: that unit has no time, and a mean over the others would leave out the fastest.
  if (t === null || c === null || units === 0) return makeComparison({ ...names, ...judged(nothing, context) });

  const blocks = pairedBlocks(treated, control);
  if (blocks !== null) return meansBlocks(blocks, timing, germinated, context, names);

  const estimate = mean([...t]) - mean([...c]);
  const test = units > 1 ? welchT(t, c) : null;
  const hodges = hodgesLehmann(t, c);
  if (test === null) {
    const effects = { hedgesG: null, hodgesLehmann: units > 1 ? hodges : null };
    return makeComparison({ ...names, estimate, effects, ...judged(nothing, context) });
  }
  const { interval, ninety, own, welch } = meansIntervals((level) => limitsOf(test, level), 'welch', timing);
  const sd = pooledSd(t, c);
  const margin = context.outcome.matters ?? 0;
  const settling = margin > 0 ? unitsForMean(margin, sd) : null;
  const neverSame = timing.coarse && measure !== 't50';

  return makeComparison({
    ...names,
    estimate,
    interval,
    effects: { hedgesG: hedgesG(t, c, 0.95), hodgesLehmann: hodges },
    test: { method: 'welch-t', statistic: test.statistic, df: test.df, p: test.p, pAdjusted: null },
    permutation: permuteMeans(...inOneOrder(t, c)),
    detectable: detectableMean({ sd, control: c.length, treated: t.length, df: test.df }),
    welch,
    wouldSettle: settling === null ? null : { units: settling, difference: margin },
    ...judged({ replicated: true, units, germinated, interval, ninety, own, neverSame }, context),
  });
}

/** Null where one of the units has no value. */
function valuesOf(units: readonly Unit[]): readonly number[] | null {
  const values = units.map(({ value }) => value).filter((value) => value !== null);
  return values.length === units.length ? values : null;
}

function pooledSd(t: readonly number[], c: readonly number[]): number {
  const squares = (t.length - 1) * variance(t) + (c.length - 1) * variance(c);
  return Math.sqrt(squares / (t.length + c.length - 2));
}
