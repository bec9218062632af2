import type { Trial } from '../trial/trial.ts';

/**
 * The date of the first look at a result: the earliest check after day 0, measurement, or weighing after
 * treatment. A row whose cells are all empty was no look; nor is a count on day 0, which shows nothing.
 * Weighings after treatment without a date are taken as of the trial's `sown`.
 *
 * @returns an ISO date, or null where nothing has been looked at yet or no date can be known
 */
export function firstCountDate(trial: Trial): string | null {
  const sownOf = new Map(trial.sowings.map(({ id, sown }) => [id, sown]));
  const dateOf = (sowing: string, day: number) => {
    const sown = sownOf.get(sowing) ?? trial.sown;
    return sown === null ? null : addDays(sown, day);
  };

  const looks = [
    ...trial.counts.filter(({ germinated, day }) => germinated !== null && day > 0),
    ...trial.measurements.filter(({ values }) => Object.values(values).some((value) => value !== null)),
  ].map(({ sowing, day }) => dateOf(sowing, day));
  const weighed = trial.weighings.filter(({ stage }) => stage !== 'before').map(({ date }) => date ?? trial.sown);

  return [...looks, ...weighed].filter((date) => date !== null).toSorted()[0] ?? null;
}

const DAY = 86_400_000;

function addDays(iso: string, days: number): string {
  return new Date(Date.parse(iso) + Math.floor(days) * DAY).toISOString().slice(0, 10);
}
