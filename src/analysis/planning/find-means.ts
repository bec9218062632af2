import { mean } from 'simple-statistics';
import { pairedT } from '../../statistics/paired-t.ts';
import { welchT } from '../../statistics/welch-t.ts';
import type { Context } from '../comparisons/context.ts';
import { germinatedIn } from '../comparisons/germinated-in.ts';
import { limitsOf } from '../comparisons/limits-of.ts';
import { meansIntervals } from '../comparisons/means-intervals.ts';
import { timingOf, type Timing } from '../comparisons/timing-of.ts';
import type { Pair } from '../units/lot-units.ts';
import { pairedBlocks, type PairedBlock } from '../units/paired-blocks.ts';
import type { Unit } from '../units/unit.ts';
import { found, type Found } from './found.ts';

/** Crops with one unit of each are the blocks (methods 4): the blocks, and what their checks allow together. */
export interface CropsAsBlocks {
  readonly blocks: readonly PairedBlock[];
  readonly timing: Timing;
}

/**
 * Times and traits of one crop by the parts of meansComparison and meansBlocks that interval, test and verdict come
 * from; without the permutation and the sizes of effects, which a simulation cannot wait for.
 *
 * @param crops given: these instead of the pair
 *
 * Checked against: meansComparison and lotsAsBlocks on the same draws.
 */
export function findMeans({ treated, control }: Pair, context: Context, crops: CropsAsBlocks | null = null): Found {
  const { measure } = context.outcome;
  const blocks = crops?.blocks ?? pairedBlocks(treated, control);
  const all = blocks?.flatMap((block) => [...block.treated, ...block.control]) ?? [...treated.units, ...control.units];
  const units = blocks?.length ?? Math.min(treated.units.length, control.units.length);
  const germinated = germinatedIn(measure, all);
  const timing = crops?.timing ?? timingOf(measure, treated, control);
  const test =
    units < 2 || all.some(({ value }) => value === null)
      ? null
      : blocks === null
        ? welchT(treated.units.map(valueOf), control.units.map(valueOf))
        : pairedT(blocks.map(differenceIn));
  if (test === null)
    return found(null, { replicated: units > 1, units, germinated, interval: null, ninety: null }, null, context);

  const limits = (level: number) => limitsOf(test, level);
  const { interval, ninety, own } = meansIntervals(limits, blocks === null ? 'welch' : 'paired', timing);
  return found(test.difference, { replicated: true, units, germinated, interval, ninety, own }, test.p, context);
}

const valueOf = ({ value }: Unit): number => value ?? 0; // all have one
const averageOf = (units: readonly Unit[]): number => mean(units.map(valueOf));
const differenceIn = ({ treated, control }: PairedBlock): number => averageOf(treated) - averageOf(control);
