import { readRows } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type { Table } from '../csv/table.ts';
import type { FileProblems } from '../file-problems.ts';
import { countsRow } from '../schema/counts.ts';
import type { ReadAs } from '../trial.ts';
import { categoriesOf, type Check } from './check.ts';
import { isDayHeading } from './is-day-heading.ts';
import { readWideCounts } from './read-wide-counts.ts';
import { readAsOf } from './read-as-of.ts';
import { hasWhen } from './has-when.ts';
import { rowDay } from './row-day.ts';
import { rowSowing } from './row-sowing.ts';
import type { SowingNames } from './sowing-names.ts';

export interface ReadChecks {
  readonly checks: readonly Check[];
  readonly readAs: ReadAs;
}

/** counts.csv in either layout: a row for each check, or a row for each sowing with a column for each count day. */
export function readCounts(bytes: Uint8Array, report: FileProblems, names: SowingNames | null): ReadChecks | null {
  const table = readTable('counts.csv', bytes, report);
  if (table === null) return null;
  const long = table.headings.some(({ name }) => name === 'germinated');
  const wide = !long && table.headings.some(isDayHeading);
  return wide ? readWideCounts(table, names) : readLongCounts(table, names);
}

function readLongCounts(table: Table, names: SowingNames | null): ReadChecks | null {
  const { report } = table;
  const read = readRows(table, { key: 'sowing', row: countsRow, units: { day: 'days' } });
  if (!read || !hasWhen(read, table)) return null;

  const checks = read.rows.flatMap((row): Check[] => {
    const sowing = rowSowing(row, report, names);
    if (sowing === null || !row.data) return [];
    const day = rowDay(row, names?.sowing(sowing) ?? null, report);
    if (day === null) return [];
    const { germinated, scorer, note } = row.data;
    return [
      {
        sowing,
        day,
        germinated,
        ...categoriesOf(row.data),
        scorer: scorer ?? null,
        note: note ?? null,
        file: table.name,
        line: row.line,
        empty: germinated === null && row.text('germinated') === '',
        say: (level, field, refusal) => report[level](row.place(field), refusal),
        cell: () => row.place('germinated').cell,
      },
    ];
  });
  return { checks, readAs: readAsOf(table, read.decimal, 'long') };
}
