import type { Outcome, Sowing, Trial } from '../../trial/trial.ts';
import { onceATrial } from '../once-a-trial.ts';
import { checksUntil } from './checks-until.ts';
import { dayOfLot } from './day-of-lot.ts';
import { deviationOf } from './deviation-of.ts';
import type { Check, LeftOut, LotReadings, Reading } from './unit.ts';
import { wantedDay } from './wanted-day.ts';

/**
 * Germination counts of one lot for an outcome. Sowings that a deviation took out, that were not
 * checked on the day, or whose seeds are not known while others of their group are, do not enter and
 * are listed. Where no sowing of a group has a seed number all stay: their counts are shown.
 *
 * @param withLeftOut gives the same with the deviations in, and missed checks as last counted
 */
export function countReadings(trial: Trial, outcome: Outcome, lot: string, withLeftOut = false): LotReadings {
  const sowings = trial.sowings.filter((sowing) => sowing.lot === lot);
  const checksOf = checksBySowing(trial);
  const deviation = new Map(sowings.map(({ id }) => [id, deviationOf(trial, id)]));
  const day = dayOfLot(
    wantedDay(outcome, lot),
    sowings
      .filter(({ id }) => deviation.get(id) === null)
      .map(({ id, seeds }) => ({ seeds, checks: checksOf.get(id) ?? [] })),
  );

  const readings: Reading[] = [];
  const leftOut: LeftOut[] = [];
  for (const sowing of sowings) {
    const what = deviation.get(sowing.id) ?? null;
    const checks = day === null ? null : checksUntil(checksOf.get(sowing.id) ?? [], sowing.seeds, day, withLeftOut);
    if (what !== null && !withLeftOut) leftOut.push({ sowing: sowing.id, reason: 'deviation', what });
    else if (checks === null) leftOut.push({ sowing: sowing.id, reason: 'not-checked', what: null });
    else if (needsSeeds(outcome) && lacksSeeds(sowing, sowings))
      leftOut.push({ sowing: sowing.id, reason: 'no-seed-number', what: null });
    else readings.push({ sowing, checks, plants: [], toldApart: false });
  }
  return { lot, day, readings, leftOut };
}

const checksBySowing = onceATrial((trial) => {
  const checks = new Map<string, Check[]>();
  for (const { sowing, day, germinated } of trial.counts) {
    if (germinated === null) continue;
    const list = checks.get(sowing) ?? [];
    list.push({ day, total: germinated });
    checks.set(sowing, list);
  }
  return checks;
});

const needsSeeds = ({ measure }: Outcome): boolean =>
  measure === 'germination' || measure === 'maguire' || measure === 'storage';

/** No seed number, while another sowing of the same group has one. */
function lacksSeeds(sowing: Sowing, sowings: readonly Sowing[]): boolean {
  const { seeds, treatment, stored } = sowing;
  const isAlike = (other: Sowing) => other.treatment === treatment && other.stored === stored;
  return seeds === null && sowings.some((other) => isAlike(other) && other.seeds !== null);
}
