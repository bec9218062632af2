import { daysBetween } from '../text/days-between.ts';
import type { BenchSowing, RecordedDay } from './bench.ts';

/**
 * Days after a sowing's own day 0 on the day that is being recorded.
 *
 * @param sown the trial's day 0, for sowings without one of their own
 * @returns null where the date is before sowing, or the day of sowing is not known
 */
export function dayAt(
  { sown: own }: Pick<BenchSowing, 'sown'>,
  picked: RecordedDay,
  sown: string | null,
): number | null {
  if ('day' in picked) return picked.day;
  const start = own ?? sown;
  if (start === null) return null;
  const day = daysBetween(start, picked.date);
  return day >= 0 ? day : null;
}
