import type { BenchSession } from '../../trial/bench/bench.ts';
import { csvText } from '../csv-text.ts';

/**
 * events.csv of what was recorded: mishaps and care, the earliest first. Null: nothing happened.
 *
 * Checked against: the project's own reader, which gives back the same records.
 */
export function eventsCsv({ records }: BenchSession): string | null {
  const events = Object.values(records.events).toSorted(
    (a, b) => (a.day ?? Infinity) - (b.day ?? Infinity) || (a.date ?? '').localeCompare(b.date ?? '', 'en') || 0,
  );
  if (events.length === 0) return null;
  return csvText(
    {
      head: ['day', 'date', 'sowing', 'what', 'action'],
      rows: events.map(({ day, date, sowing, what, action }) => [day, date, sowing, what, action]),
    },
    false,
    ['sowing'],
  );
}
