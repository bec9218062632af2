import type { Measure } from '../../trial/trial.ts';
import type { UnitValue } from '../analysis.ts';
import { plantsOf } from '../measures/plants-of.ts';
import type { UnitGroup } from '../units/unit.ts';

/** The units of a group, one row each: what the charts draw and the R script reads. */
export function unitValues({ treatment, units }: UnitGroup, measure: Measure): readonly UnitValue[] {
  return units.map((unit) => ({
    lot: unit.lot,
    treatment,
    stored: unit.stored,
    block: unit.block,
    unit: unit.id,
    sowings: unit.sowings,
    seeds: unit.seeds,
    count: unit.count,
    value: unit.value,
    plants: plantsOf(measure, unit),
  }));
}
