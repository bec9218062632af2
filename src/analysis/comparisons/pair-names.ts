import type { Comparison, UnitKind } from '../analysis.ts';
import type { Pair } from '../units/lot-units.ts';
import type { Context } from './context.ts';

/** Who is compared with whom, and in what units. */
export type Names = Pick<Comparison, 'lot' | 'treatment' | 'control' | 'stored' | 'unit' | 'units'>;

/** Names and unit numbers of a pair; batches or trays name the unit as soon as one side has them. */
export function pairNames({ lot, stored, treated, control }: Pair, { unit }: Context): Names {
  const kinds = [...treated.units, ...control.units].map(({ kind }) => kind);
  const kind: UnitKind = kinds.includes('batch') ? 'batch' : kinds.includes('tray') ? 'tray' : 'sowing';
  return {
    lot,
    treatment: treated.treatment,
    control: control.treatment,
    stored,
    unit,
    units: { treatment: treated.units.length, control: control.units.length, kind },
  };
}
