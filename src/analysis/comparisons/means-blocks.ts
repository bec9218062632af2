import { mean } from 'simple-statistics';
import { detectableMean } from '../../statistics/detectable-mean.ts';
import { pairedT } from '../../statistics/paired-t.ts';
import { signFlipTest } from '../../statistics/permutation/sign-flip-test.ts';
import { unitsToSettle } from '../../statistics/units-to-settle.ts';
import type { Comparison } from '../analysis.ts';
import type { PairedBlock } from '../units/paired-blocks.ts';
import type { Unit } from '../units/unit.ts';
import type { Context } from './context.ts';
import { judged } from './judged.ts';
import { limitsOf } from './limits-of.ts';
import { makeComparison } from './make-comparison.ts';
import { meansIntervals } from './means-intervals.ts';
import type { Names } from './pair-names.ts';
import type { Timing } from './timing-of.ts';

/** Blocks from which on the permutation within blocks is reported. */
const BLOCKS_TO_PERMUTE = 6;

/**
 * Means of two treatments that share three or more blocks: paired t on the differences within blocks
 * (methods 3 and 6). Several units of a treatment in one block are averaged first; the block is the unit.
 * Hedges' g and the Hodges–Lehmann shift are those of independent groups and are not given.
 */
export function meansBlocks(
  blocks: readonly PairedBlock[],
  timing: Timing,
  germinated: number | null,
  context: Context,
  names: Names & Pick<Comparison, 'bracket'>,
): Comparison {
  const differences = blocks.map(({ treated, control }) => averageOf(treated) - averageOf(control));
  const units = blocks.length;
  const common = {
    ...names,
    units: { treatment: units, control: units, kind: 'block' as const },
    estimate: mean(differences),
    effects: { hedgesG: null, hodgesLehmann: null },
  };
  const test = isConstant(blocks, differences) ? null : pairedT(differences);
  if (test === null) {
    const nothing = { replicated: true, units, germinated, interval: null, ninety: null };
    return makeComparison({ ...common, ...judged(nothing, context) });
  }
  const { interval, ninety, own, welch } = meansIntervals((level) => limitsOf(test, level), 'paired', timing);
  const margin = context.outcome.matters ?? 0;
  const sd = test.se * Math.sqrt(units);
  const settling = margin > 0 ? unitsToSettle(margin, (number) => detectableWithin(sd, number)) : null;
  const neverSame = timing.coarse && context.outcome.measure !== 't50';

  return makeComparison({
    ...common,
    interval,
    test: { method: 'paired-t', statistic: test.statistic, df: test.df, p: test.p, pAdjusted: null },
    permutation: units < BLOCKS_TO_PERMUTE ? null : signFlipTest(differences),
    detectable: detectableWithin(sd, units),
    welch,
    wouldSettle: settling === null ? null : { units: settling, difference: margin },
    ...judged({ replicated: true, units, germinated, interval, ninety, own, neverSame }, context),
  });
}

const averageOf = (units: readonly Unit[]): number => mean(units.map(({ value }) => value ?? 0));

/** Differences that vary by rounding only, against the size of the values they come from. */
function isConstant(blocks: readonly PairedBlock[], differences: readonly number[]): boolean {
  const sizes = blocks.flatMap(({ treated, control }) => [...treated, ...control].map(({ value }) => value ?? 0));
  const size = Math.max(...sizes.map(Math.abs));
  return Math.max(...differences) - Math.min(...differences) <= 1e-12 * size;
}

/** A mean of differences in b blocks has the standard error sd/√b, that of two groups of 2b units. */
function detectableWithin(sd: number, blocks: number): number {
  return detectableMean({ sd, control: 2 * blocks, treated: 2 * blocks, df: blocks - 1 });
}
