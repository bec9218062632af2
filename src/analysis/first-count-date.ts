import { addDays } from '../trial/text/add-days.ts';
import type { Trial } from '../trial/trial.ts';
import { onceATrial } from './once-a-trial.ts';

/**
 * The date of the first look at a result: the earliest check after day 0, measurement, or weighing after
 * treatment. A row whose cells are all empty was no look; nor is a count on day 0, which shows nothing.
 * Weighings after treatment without a date are taken as of the trial's `sown`.
 *
 * @returns an ISO date, or null where nothing has been looked at yet or no date can be known
 */
export const firstCountDate = onceATrial((trial: Trial): string | null => {
  const sownOf = new Map(trial.sowings.map(({ id, sown }) => [id, sown]));
  const firstDays = new Map<string, number>(); // by day 0, of which there are few
  const look = (sowing: string, day: number, isLook: () => boolean) => {
    const sown = sownOf.get(sowing) ?? trial.sown;
    if (sown !== null && day < (firstDays.get(sown) ?? Infinity) && isLook()) firstDays.set(sown, day);
  };
  for (const { sowing, day, germinated } of trial.counts) look(sowing, day, () => germinated !== null && day > 0);
  for (const { sowing, day, values } of trial.measurements) {
    look(sowing, day, () => Object.values(values).some((value) => value !== null));
  }
  const looked = [...firstDays].map(([sown, day]) => addDays(sown, Math.floor(day)));
  const weighed = trial.weighings.filter(({ stage }) => stage !== 'before').map(({ date }) => date ?? trial.sown);

  return [...looked, ...weighed].filter((date) => date !== null).toSorted()[0] ?? null;
});
