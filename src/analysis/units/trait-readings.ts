import type { Outcome, Trial } from '../../trial/trial.ts';
import { measurementsBySowing } from '../measurements-by-sowing.ts';
import { dayOfLot } from './day-of-lot.ts';
import { deviationOf } from './deviation-of.ts';
import type { LeftOut, LotReadings, Reading } from './unit.ts';
import { wantedDay } from './wanted-day.ts';

/**
 * Measurements of one trait column of one lot on the outcome's day. Sowings that a deviation took
 * out or that were not measured on the day do not enter and are listed; an earlier measurement never
 * stands in for a missed one.
 *
 * @param withLeftOut gives the same with the deviations in
 */
export function traitReadings(trial: Trial, outcome: Outcome, lot: string, withLeftOut = false): LotReadings {
  const sowings = trial.sowings.filter((sowing) => sowing.lot === lot);
  const rowsOf = new Map(sowings.map(({ id }) => [id, rowsWith(outcome.column ?? outcome.id, trial, id)]));
  const deviation = new Map(sowings.map(({ id }) => [id, deviationOf(trial, id)]));
  const day = dayOfLot(
    wantedDay(outcome, lot),
    sowings
      .filter(({ id }) => deviation.get(id) === null)
      .map(({ id }) => ({ seeds: null, checks: (rowsOf.get(id) ?? []).map((row) => ({ day: row.day, total: 1 })) })),
  );

  const readings: Reading[] = [];
  const leftOut: LeftOut[] = [];
  for (const sowing of sowings) {
    const what = deviation.get(sowing.id) ?? null;
    const rows = (rowsOf.get(sowing.id) ?? []).filter((row) => row.day === day);
    if (what !== null && !withLeftOut) leftOut.push({ sowing: sowing.id, reason: 'deviation', what });
    else if (rows.length === 0) leftOut.push({ sowing: sowing.id, reason: 'not-measured', what: null });
    else {
      const toldApart = rows.every((row) => row.plant !== null);
      readings.push({ sowing, checks: [], plants: rows.map((row) => row.value), toldApart });
    }
  }
  return { lot, day, readings, leftOut };
}

/** What was measured of a sowing in a column, day by day. */
function rowsWith(column: string, trial: Trial, sowing: string) {
  return (measurementsBySowing(trial).get(sowing) ?? []).flatMap(({ day, plant, values }) => {
    const value = values[column] ?? null;
    return value === null ? [] : [{ day, plant, value }];
  });
}
