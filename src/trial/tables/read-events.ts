import { readRows } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type { FileProblems } from '../file-problems.ts';
import { eventsRow } from '../schema/events.ts';
import type { Event, ReadAs } from '../trial.ts';
import { eventOf } from './event-of.ts';
import { readAsOf } from './read-as-of.ts';
import { hasWhen } from './has-when.ts';
import { rowSowing } from './row-sowing.ts';
import type { SowingNames } from './sowing-names.ts';

/** events.csv: the same as deviations and events of trial.yaml, a row for each sowing touched. */
export function readEvents(
  bytes: Uint8Array,
  report: FileProblems,
  names: SowingNames | null,
  sown: string | null,
): { readonly events: readonly Event[]; readonly readAs: ReadAs } | null {
  const table = readTable('events.csv', bytes, report);
  const read = table && readRows(table, { key: 'sowing', row: eventsRow, units: { day: 'days' } });
  if (!table || !read || !hasWhen(read, table)) return null;

  const events = read.rows.flatMap((row): Event[] => {
    if (!row.data) return [];
    const { day = null, date = null, sowing = null, what, action } = row.data;
    const id = sowing === null ? null : rowSowing(row, report, names);
    if (sowing !== null && id === null) return [];
    const sowings = id === null ? [] : [id];
    const place = (field: string) => row.place(field === 'sowings' ? 'sowing' : field);
    return [eventOf({ day, date, sowings, what, action }, names, sown, report, place)];
  });
  return { events, readAs: readAsOf(table, read.decimal) };
}
