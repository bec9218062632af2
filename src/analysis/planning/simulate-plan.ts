import { holm } from '../../statistics/holm.ts';
import { seededRandom } from '../../statistics/random.ts';
import type { Context } from '../comparisons/context.ts';
import type { Pair } from '../units/lot-units.ts';
import { addSums } from './add-sums.ts';
import { drawCrop } from './draw-crop.ts';
import { findGermination } from './find-germination.ts';
import { findMeans } from './find-means.ts';
import { findTogether } from './find-together.ts';
import type { Found } from './found.ts';
import { planContext } from './plan-context.ts';
import type { PlanDesign } from './plan-design.ts';
import { NONE, type Tally } from './tally.ts';
import { tallyOf } from './tally-of.ts';
import { treatedValue } from './treated-value.ts';

/** Trials simulated with one true difference. */
export interface Arm {
  /** Every crop by itself. */
  readonly crops: Tally;
  /** All crops together; without comparisons where they cannot be put together. */
  readonly together: Tally;
  /** Trials in which at least one crop was called different, and in which one still is after Holm. */
  readonly anyShown: number;
  readonly anyFirm: number;
}

/** How simulated trials came out: where the difference that matters is there, and where there is none. */
export interface Simulation {
  readonly trials: number;
  readonly there: Arm;
  readonly none: Arm;
}

/** Which trials of a simulation to draw: `count` from number `from` on. Any split adds up to the same (addSums). */
export interface Draws {
  readonly seed: number | string;
  readonly from: number;
  readonly count: number;
}

/**
 * Trials of a design drawn at random and put through the analysis of methods 2 to 7: the same intervals, tests and
 * verdicts as a real trial gets. Every trial has a random stream of its own, from seed and number.
 *
 * @param design one without faults (designFaults)
 * @throws {RangeError} where there is no room for the difference that matters
 *
 * Source: methods.md 11. Checked against: the table of methods.md 2; R `power.t.test` and `power.prop.test`.
 */
export function simulatePlan(design: PlanDesign, { seed, from, count }: Draws): Simulation {
  const treated = treatedValue(design);
  if (treated === null) throw new RangeError('simulatePlan needs room for the difference that matters');
  const context = planContext(design);
  const difference = treated - design.base;
  let sum: Simulation = { trials: 0, there: NO_ARM, none: NO_ARM };
  for (let trial = from; trial < from + count; trial++) {
    const random = seededRandom(`${seed} ${trial}`);
    const there = simulateTrial(design, difference, context, random);
    const none = simulateTrial(design, 0, context, random);
    sum = addSums(sum, { trials: 1, there, none });
  }
  return sum;
}

const NO_ARM: Arm = { crops: NONE, together: NONE, anyShown: 0, anyFirm: 0 };

function simulateTrial(design: PlanDesign, difference: number, context: Context, random: () => number): Arm {
  const pairs = Array.from({ length: design.crops }, (_, index) =>
    drawCrop(design, design.base + difference, String(index + 1), random),
  );
  const find = (pair: Pair): Found => (design.measure === 'germination' ? findGermination : findMeans)(pair, context);
  const crops = design.units > 1 ? pairs.map(find) : [];
  const adjusted = holm(crops.map(({ p }) => p ?? 1));
  const tallies = crops.map((crop, index) => tallyOf(crop, difference, adjusted[index] ?? null));
  const together = design.crops > 1 ? findTogether(pairs, context) : null;
  return {
    crops: tallies.reduce(addSums, NONE),
    together: together === null ? NONE : tallyOf(together, difference, together.p),
    anyShown: tallies.some(({ above, below }) => above + below > 0) ? 1 : 0,
    anyFirm: tallies.some(({ firm }) => firm > 0) ? 1 : 0,
  };
}
