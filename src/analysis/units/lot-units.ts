import { distinctGroups } from './distinct-groups.ts';
import type { LotDesign } from './lot-design.ts';
import type { LeftOut, LotReadings, Unit, UnitGroup } from './unit.ts';
import { unitsOf } from './units-of.ts';

/** A treatment beside the control, in one lot at one storage time. */
export interface Pair {
  readonly lot: string;
  readonly stored: number | null;
  readonly treated: UnitGroup;
  readonly control: UnitGroup;
  /** The other groups of the lot, which help to tell how much its units vary. */
  readonly others: readonly UnitGroup[];
}

/** One lot in one outcome: its groups as they are shown, and the pairs that are compared. */
export interface LotUnits {
  readonly lot: string;
  readonly day: number | null;
  readonly groups: readonly UnitGroup[];
  readonly pairs: readonly Pair[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * Units, groups and pairs of one lot (methods 0). Batches are the units of a pair where both of its
 * treatments have them; a group is shown in the units of its own comparison, the control in batches
 * as soon as one comparison is of batches.
 */
export function lotUnits(
  design: LotDesign,
  { lot, day, readings, leftOut }: LotReadings,
  valueOf: (unit: Omit<Unit, 'value'>) => number | null,
): LotUnits {
  const { control } = design;
  const groupAt = (treatment: string, stored: number | null, byBatch: boolean): UnitGroup => ({
    lot,
    treatment,
    stored,
    units: unitsOf(design, readings, treatment, stored, byBatch, valueOf),
  });

  const byTime = design.times.map((stored) => {
    const present = design.treatments.filter((treatment) => design.sowingsOf(treatment, stored).length > 0);
    const rivals = present.filter((treatment) => treatment !== control);
    const hasControl = control !== null && present.includes(control);
    const isByBatch = (treatment: string): boolean =>
      treatment === control
        ? rivals.some(isByBatch)
        : design.hasBatches(treatment, stored) && (!hasControl || design.hasBatches(control, stored));

    const groups = present.map((treatment) => groupAt(treatment, stored, isByBatch(treatment)));
    const compared = hasControl ? groups.filter((group) => isComparable(design, group, control)) : [];
    const own = groups.find(({ treatment }) => treatment === control);
    const controlAt = (byBatch: boolean) =>
      own && byBatch === isByBatch(own.treatment) ? own : groupAt(control ?? '', stored, byBatch);
    const pairs = compared.map((treated) => ({
      lot,
      stored,
      treated,
      control: controlAt(isByBatch(treated.treatment)),
    }));
    return { groups, pairs };
  });

  const groups = byTime.flatMap((time) => time.groups);
  const pairs = byTime
    .flatMap((time) => time.pairs)
    .map((pair) => ({ ...pair, others: distinctGroups(groups, [pair.treated, pair.control]) }));
  return { lot, day, groups, pairs, leftOut };
}

/** Not the control itself, and not the start of a storage series, which is the same sowings for all. */
function isComparable(design: LotDesign, { treatment, stored }: UnitGroup, control: string): boolean {
  const sowings = design.sowingsOf(treatment, stored);
  return treatment !== control && sowings[0] !== design.sowingsOf(control, stored)[0];
}
