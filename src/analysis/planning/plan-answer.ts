import { addSums } from './add-sums.ts';
import { closedForm, type ClosedPlan } from './closed-form.ts';
import { designFaults } from './design-faults.ts';
import type { PlanDesign } from './plan-design.ts';
import { planWarnings, type PlanWarning } from './plan-warnings.ts';
import { simulatePlan } from './simulate-plan.ts';
import { simulated, type Simulated } from './simulated.ts';
import { treatedValue } from './treated-value.ts';
import { unitsNeeded } from './units-needed.ts';

/** What a trial of this design could and could not show. */
export interface PlanAnswer {
  readonly design: PlanDesign;
  /** Value of the treatment with which it was worked out, in the unit of `base`. */
  readonly treated: number;
  readonly closed: ClosedPlan;
  /** Null before the simulation is done, and where nothing of it can be analysed: one unit of each. */
  readonly simulated: Simulated | null;
  /** Units of each with which the difference is shown 4 times in 5, by formula; null where too many. */
  readonly needed: number | null;
  readonly warnings: readonly PlanWarning[];
}

/** How much to simulate. */
export interface PlanSimulation {
  /** 2000 where nothing else is said; 0: formula only. */
  readonly trials?: number;
  readonly seed?: number | string;
  /** Called after every hundred trials. */
  readonly onProgress?: (done: number, all: number) => void;
}

/**
 * A plan worked out: by formula at once, and by simulating the very analysis. 2000 trials of one crop take about a
 * second.
 *
 * @throws {RangeError} on a design with faults; ask designFaults first and tell the grower
 */
export function planAnswer(
  design: PlanDesign,
  { trials = 2000, seed = 'plan', onProgress }: PlanSimulation = {},
): PlanAnswer {
  const faults = designFaults(design);
  const treated = treatedValue(design);
  if (treated === null || faults.length > 0)
    throw new RangeError(`planAnswer needs a design, got ${faults.join(', ')}`);

  const parts = Array.from({ length: Math.ceil(trials / PART) }, (_, index) => {
    const count = Math.min(PART, trials - index * PART);
    const part = simulatePlan(design, { seed, from: index * PART, count });
    onProgress?.(index * PART + count, trials);
    return part;
  });
  const outcome = parts.length === 0 ? null : simulated(parts.reduce(addSums));
  const answer = {
    design,
    treated,
    closed: closedForm(design),
    simulated: outcome?.crop || outcome?.together ? outcome : null,
    needed: unitsNeeded(design),
  };
  return { ...answer, warnings: planWarnings(answer) };
}

const PART = 100;
