import { smallestP } from '../../statistics/permutation/smallest-p.ts';
import { closedMeans } from './closed-means.ts';
import { closedShares } from './closed-shares.ts';
import type { PlanDesign } from './plan-design.ts';

/** What a formula says about one comparison of a plan. */
export interface ClosedForm {
  /** Chance, 0 to 1, that the difference that matters is shown where it is there. */
  readonly power: number;
  /** Smallest difference that is shown 4 times in 5, in the unit of `matters`; null where there is no room for it. */
  readonly detectable: number | null;
  /** Half the width of the 95 % range, in the unit of `matters`. */
  readonly halfWidth: number;
}

/** Number of units behind one comparison: of each treatment, and how their spread is told. */
export interface UnitsBehind {
  readonly units: number;
  /** Degrees of freedom that tell the spread between units. */
  readonly df: number;
}

/** A whole plan by formula. */
export interface ClosedPlan {
  /** One crop by itself; null with one unit of each, which cannot tell. */
  readonly crop: ClosedForm | null;
  /** All crops together; null where they cannot be put together (methods 4). */
  readonly together: ClosedForm | null;
  /** The smallest p that shuffling the trays of one crop can reach. */
  readonly smallestP: number;
}

/**
 * What a plan could show, by formula: design effect φ and t quantiles for germination, noncentral t for means. At
 * once, where simulatePlan takes seconds; it does not know about the ends of the scale nor about gaps between checks.
 *
 * @param design one without faults (designFaults)
 *
 * Source: methods.md 7 and 11; the pooled comparison by its number of units and df (methods.md 4).
 * Checked against: R `power.t.test`, `power.prop.test`; simulatePlan.
 */
export function closedForm(design: PlanDesign): ClosedPlan {
  const { units, crops } = design;
  const inBlocks = design.inBlocks && units >= 3;
  const form = (behind: UnitsBehind) =>
    design.measure === 'germination' ? closedShares(design, behind) : closedMeans(design, behind);
  const alone = { units, df: inBlocks ? units - 1 : 2 * units - 2 };
  const pooled = { units: crops * units, df: crops * (2 * units - 2) };
  return {
    crop: units < 2 ? null : form(alone),
    together: units > 1 && crops > 1 ? form(pooled) : units === 1 && crops > 2 ? form(asBlocks(crops)) : null,
    smallestP: smallestP(units, inBlocks),
  };
}

/** One unit of each in every crop: the crops are the blocks. */
const asBlocks = (crops: number): UnitsBehind => ({ units: crops, df: crops - 1 });
