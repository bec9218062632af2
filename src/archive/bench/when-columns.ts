import type { BenchTrial } from '../../trial/bench/bench.ts';
import { dateOfDay } from '../../trial/bench/date-of-day.ts';
import type { Cell } from '../table.ts';

/**
 * The columns that say when: the day and, where the day of sowing is known, its date as well. Readers compare the two,
 * so that a wrong day of sowing on the device is found and does not shift every count.
 */
export function whenColumns(trial: BenchTrial): readonly string[] {
  return hasDates(trial) ? ['day', 'date'] : ['day'];
}

/** The cells below `whenColumns`. */
export function whenCells(trial: BenchTrial, sowing: string, day: number): readonly Cell[] {
  if (!hasDates(trial)) return [day];
  const sown = trial.sowings.find(({ id }) => id === sowing)?.sown ?? trial.sown;
  return [day, sown === null ? null : dateOfDay(sown, day)];
}

const hasDates = ({ sown, sowings }: BenchTrial): boolean =>
  sown !== null || sowings.some((sowing) => sowing.sown !== null);
