import type { ReadRows } from '../csv/read-rows.ts';
import type { Table } from '../csv/table.ts';
import type { When } from './row-day.ts';

/** Whether a table says when: reports where it has neither a column "day" nor a column "date". */
export function hasWhen({ has }: ReadRows<When>, { headings, report }: Table): boolean {
  if (has('day') || has('date')) return true;
  report.error(
    { line: headings[0]?.place.line ?? 1, column: 1, cell: null, field: 'day' },
    {
      rule: 'missing-column',
      message: 'there is neither a column "day" nor a column "date"',
      remedy: 'Add the column "day" with the days since sowing, or "date" with dates such as 2026-04-12.',
    },
  );
  return false;
}
