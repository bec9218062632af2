import type { Trial } from '../../trial/trial.ts';
import type { Moisture } from '../analysis.ts';
import type { LotUnits } from './lot-units.ts';
import type { Unit, UnitGroup } from './unit.ts';
import type { Weighed } from './weighed-as.ts';

/**
 * Weighed batches of one lot as units. Repeats are weighings of the same batch and are averaged; what
 * was weighed without naming a batch is one unit, since nothing says that it was dried separately.
 */
export function weighedUnits(trial: Trial, lot: string, rows: readonly Moisture[], weighed: Weighed): LotUnits {
  const control = trial.treatments.find((treatment) => treatment.control)?.id ?? null;
  const groups = trial.treatments.flatMap(({ id }): UnitGroup[] => {
    const own = rows.filter((row) => row.lot === lot && row.treatment === id);
    const batches = [...Map.groupBy(own, ({ batch }) => batch ?? '')];
    const units = batches
      .map(([batch, repeats]) => weighedUnit(lot, id, batch, repeats, weighed))
      .filter(({ value }) => value !== null);
    return units.length === 0 ? [] : [{ lot, treatment: id, stored: null, units }];
  });
  const untreated = groups.find(({ treatment }) => treatment === control);
  const treated = untreated === undefined ? [] : groups.filter((group) => group !== untreated);
  const pairs = treated.map((group) => ({
    lot,
    stored: null,
    treated: group,
    control: untreated ?? group,
    others: groups.filter((other) => other !== group && other !== untreated),
  }));
  return { lot, day: null, groups, pairs, leftOut: [] };
}

function weighedUnit(
  lot: string,
  treatment: string,
  batch: string,
  repeats: readonly Moisture[],
  weighed: Weighed,
): Unit {
  const values = repeats.map((row) => row[weighed]).filter((value) => value !== null);
  return {
    kind: 'batch',
    id: batch === '' ? treatment : batch,
    lot,
    treatment,
    stored: null,
    block: null,
    spansBlocks: false,
    sowings: [],
    seeds: null,
    count: null,
    checks: [],
    plants: [],
    toldApart: false,
    value: values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length,
  };
}
