import type { Group, UnitKind } from '../analysis.ts';
import type { UnitGroup } from '../units/unit.ts';

/** A group with its units and sowings counted, its keys in the order of the JSON, and nothing computed yet. */
export function groupNames({ lot, treatment, stored, units }: UnitGroup): Group {
  const kinds = units.map(({ kind }) => kind);
  const unit: UnitKind = kinds.includes('batch') ? 'batch' : kinds.includes('tray') ? 'tray' : 'sowing';
  return {
    lot,
    treatment,
    stored,
    unit,
    units: units.length,
    sowings: units.reduce((sum, { sowings }) => sum + sowings.length, 0),
    seeds: null,
    count: null,
    estimate: null,
    sd: null,
    interval: null,
    bracket: null,
    plants: null,
    icc: null,
    plantSd: null,
  };
}
