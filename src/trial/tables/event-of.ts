import type { FileProblems, Place } from '../file-problems.ts';
import { daysBetween } from '../text/days-between.ts';
import type { Event } from '../trial.ts';
import type { SowingNames } from './sowing-names.ts';

/**
 * An event with its day where only its date was given: days from day 0 of the sowings that it touched, where
 * these share one, else of the trial. Reports an event without day and date, one before sowing, and left-out sowings that are not named.
 */
export function eventOf(
  event: Event,
  names: SowingNames | null,
  sown: string | null,
  report: FileProblems,
  place: (field: string) => Place,
): Event {
  if (event.action === 'left-out' && event.sowings.length === 0) {
    report.error(place('sowings'), {
      rule: 'left-out-none',
      message: 'something was left out, but no sowing is named',
      remedy: 'Name the sowings that are left out of the comparison, or write "kept".',
    });
  }
  if (event.day === null && event.date === null) {
    report.error(place('day'), {
      rule: 'missing',
      message: 'is missing',
      remedy: 'Give the day after sowing, or a date.',
    });
  }
  if (event.date === null || event.day !== null) return event;
  const starts = new Set(event.sowings.map((id) => names?.sowing(id)?.sown ?? sown));
  const [start] = starts.size === 1 ? [...starts] : [sown];
  if (start == null) return event;
  const day = daysBetween(start, event.date);
  if (day >= 0) return { ...event, day };
  if (event.action === 'care') return event; // care before sowing happens: seed is soaked, pots are filled
  report.error(place('date'), {
    rule: 'before-sowing',
    message: `${event.date} is before day 0, ${start}`,
    remedy: 'Look both dates up; one of them is off.',
  });
  return event;
}
