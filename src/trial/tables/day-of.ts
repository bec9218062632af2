import type { FileProblems, Place } from '../file-problems.ts';
import { daysBetween } from '../text/days-between.ts';
import { shown } from '../text/shown.ts';
import type { Sowing } from '../trial.ts';

/**
 * Days from a sowing's own day 0 to a date, or null where it cannot be known. A date before sowing is reported.
 *
 * @param sowing null where its row was refused or it is not known
 */
export function dayOf(date: string, sowing: Sowing | null, report: FileProblems, place: Place): number | null {
  if (sowing === null) return null;
  if (sowing.sown === null) {
    report.error(place, {
      rule: 'no-sowing-date',
      message: `${date} cannot be counted in days: the date of sowing is not known`,
      remedy: 'Give "sown" in trial.yaml, or days in place of dates.',
    });
    return null;
  }
  const day = daysBetween(sowing.sown, date);
  if (day >= 0) return day;
  report.error(place, {
    rule: 'before-sowing',
    message: `${date} is before sowing ${shown(sowing.id)} was sown, on ${sowing.sown}`,
    remedy: 'Look both dates up; one of them is off.',
  });
  return null;
}
