import { closedForm } from './closed-form.ts';
import { MOST } from './design-faults.ts';
import type { PlanDesign } from './plan-design.ts';

/** The chance that a crop by itself shows the difference that matters, by the number of trays of each. */
export interface ChanceByUnits {
  readonly units: number;
  /** 0 to 1, by formula; 0 with one tray of each, which never shows anything. */
  readonly chance: number;
}

/**
 * How the chance to show the difference rises with the number of trays, by formula: from 1 past the number of the design
 * and past the number needed, to 12 at least.
 *
 * @param design one without faults (designFaults)
 * @param needed trays that show it 4 times in 5 (unitsNeeded); null where too many
 */
export function chancesByUnits(design: PlanDesign, needed: number | null): readonly ChanceByUnits[] {
  const most = Math.min(MOST.units, Math.max(12, Math.ceil(1.25 * Math.max(design.units, needed ?? design.units))));
  return Array.from({ length: most }, (_, index) => {
    const units = index + 1;
    return { units, chance: closedForm({ ...design, units }).crop?.power ?? 0 };
  });
}
