import { createEvents, type EventAttributes } from 'ics';
import { dueDates } from '../analysis/due-dates.ts';
import type { Due } from '../analysis/due-next.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';

/**
 * The planned days of a trial as an iCalendar file, a whole day each: counts, measurements, tests of stored seed. The same bytes
 * at every build: it is stamped with the first of its own days. Nothing in it tells a treatment.
 *
 * @param address of the report
 * @returns null where nothing is planned, or no date is known
 * @throws {Error} where a date cannot be written
 *
 * Source: RFC 5545 (iCalendar), by the package ics.
 */
export function calendar(trial: Trial, address: string, words: Words): string | null {
  const days = dueDates(trial);
  const [first] = days;
  if (first === undefined) return null;
  const timestamp = Date.parse(`${first.date}T00:00:00Z`);
  const events = days.map((day): EventAttributes & Stamped => ({
    start: dateOf(day.date),
    duration: { days: 1 },
    title: words.say(`calendar.${day.what}`, { title: trial.title, at: atOf(day, words) }),
    url: address,
    uid: `${trial.id}-${day.what}-${day.at}@${new URL(address).host}`,
    timestamp,
    transp: 'TRANSPARENT',
    productId: '-//fairsown//trials//EN',
    calName: trial.title,
  }));
  const { error, value } = createEvents(events);
  if (error || value === undefined) throw error ?? new Error(`${trial.id} has dates that no calendar can hold`);
  return value;
}

/** Taken by the package, left out of its types. */
interface Stamped {
  readonly timestamp: number;
}

const atOf = ({ what, at }: Due, words: Words): string =>
  what === 'test' ? words.counted(at, 'year') : words.number(at, Number.isInteger(at) ? 0 : 1);

function dateOf(iso: string): [number, number, number] {
  const [year = 0, month = 0, day = 0] = iso.split('-').map(Number);
  return [year, month, day];
}
