import { lotDispersion } from '../comparisons/lot-dispersion.ts';
import { scoreComparison, type ScoreComparison } from '../comparisons/score-comparison.ts';
import { scoreInBlocks } from '../comparisons/score-in-blocks.ts';
import type { Context } from '../comparisons/context.ts';
import { countedUnits } from '../units/counted-units.ts';
import type { Pair } from '../units/lot-units.ts';
import { pairedBlocks, type PairedBlock } from '../units/paired-blocks.ts';
import { total } from '../units/total.ts';
import type { Unit } from '../units/unit.ts';
import { found, type Found } from './found.ts';

/**
 * Germination of one crop by the parts of germinationComparison and germinationBlocks that interval, test and verdict
 * come from; without the permutation and the sizes of effects, which a simulation cannot wait for.
 *
 * @param blocks given: these (crops with one unit of each); else those of the pair, where it has three
 *
 * Checked against: germinationComparison on the same draws.
 */
export function findGermination(
  pair: Pair,
  context: Context,
  blocks = pairedBlocks(pair.treated, pair.control),
): Found {
  if (blocks !== null) return judge(scoreInBlocks(blocks.map(totals)), blocks.length, blocks.flatMap(unitsIn), context);
  const { treated, control } = pair;
  const score = scoreComparison(totalOf(treated.units), totalOf(control.units), lotDispersion([treated, control]));
  const units = Math.min(treated.units.length, control.units.length);
  return judge(score, units, [...treated.units, ...control.units], context);
}

const totalOf = (units: readonly Unit[]) => total(countedUnits(units) ?? []);
const totals = ({ treated, control }: PairedBlock) => ({ treated: totalOf(treated), control: totalOf(control) });
const unitsIn = ({ treated, control }: PairedBlock) => [...treated, ...control];

function judge({ estimate, limits, p }: ScoreComparison, units: number, all: readonly Unit[], context: Context): Found {
  const interval = { level: 0.95, ...limits(0.95), method: 'newcombe-effective' as const };
  const germinated = totalOf(all).count;
  return found(estimate, { replicated: units > 1, units, germinated, interval, ninety: limits(0.9) }, p, context);
}
