import type { Outcome, Trial } from '../../trial/trial.ts';
import { unitValue } from '../measures/unit-value.ts';
import { countReadings } from '../units/count-readings.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { LeftOut, UnitGroup } from '../units/unit.ts';
import { unitsOf } from '../units/units-of.ts';

/** One lot of a storage series: a group a treatment and storage time, in the order of time. */
export interface StorageUnits {
  readonly lot: string;
  readonly day: number | null;
  readonly groups: readonly UnitGroup[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * The units of a storage series. What was stored separately is the jar or packet opened, so sowings of one batch
 * are one unit even where a treatment has no other: many trays from one jar share its luck.
 */
export function storageUnits(trial: Trial, outcome: Outcome, lot: string): StorageUnits {
  const design = lotDesign(trial, lot);
  const { day, readings, leftOut } = countReadings(trial, outcome, lot);
  const groups = design.times
    .filter((stored) => stored !== null)
    .flatMap((stored) =>
      design.treatments
        .filter((treatment) => design.sowingsOf(treatment, stored).length > 0)
        .map((treatment) => ({
          lot,
          treatment,
          stored,
          units: unitsOf(design, readings, treatment, stored, true, (unit) => unitValue('storage', unit)),
        })),
    );
  return { lot, day, groups, leftOut };
}
