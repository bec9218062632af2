import { closedForm } from './closed-form.ts';
import { MOST } from './design-faults.ts';
import type { PlanDesign } from './plan-design.ts';

/**
 * Trays of each treatment with which the difference that matters is shown 4 times in 5, by formula: a proposal for a
 * plan, to be checked by simulatePlan.
 *
 * @param design one without faults; its own number of units is not used
 * @returns from 3, so that being alike could be shown as well; null where even 50 of each would not do
 */
export function unitsNeeded(design: PlanDesign): number | null {
  for (let units = 3; units <= MOST.units; units++) {
    if ((closedForm({ ...design, units }).crop?.power ?? 0) >= 0.8) return units;
  }
  return null;
}
