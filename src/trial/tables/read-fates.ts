import { readRows } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type { FileProblems } from '../file-problems.ts';
import { fatesRow } from '../schema/fates.ts';
import { categoriesOf, type Check } from './check.ts';
import { readAsOf } from './read-as-of.ts';
import type { ReadChecks } from './read-counts.ts';
import { hasWhen } from './has-when.ts';
import { rowDay } from './row-day.ts';
import { rowSowing } from './row-sowing.ts';
import type { SowingNames } from './sowing-names.ts';

/** fates.csv: what became of seeds that are no normal seedlings, as totals of that day; for the wide layout. */
export function readFates(bytes: Uint8Array, report: FileProblems, names: SowingNames | null): ReadChecks | null {
  const table = readTable('fates.csv', bytes, report);
  const read = table && readRows(table, { key: 'sowing', row: fatesRow, units: { day: 'days' } });
  if (!table || !read || !hasWhen(read, table)) return null;

  const checks = read.rows.flatMap((row): Check[] => {
    const sowing = rowSowing(row, report, names);
    if (sowing === null || !row.data) return [];
    const day = rowDay(row, names?.sowing(sowing) ?? null, report);
    if (day === null) return [];
    const { scorer, note } = row.data;
    return [
      {
        sowing,
        day,
        germinated: null,
        ...categoriesOf(row.data),
        scorer: scorer ?? null,
        note: note ?? null,
        file: table.name,
        line: row.line,
        empty: false,
        say: (level, field, refusal) => report[level](row.place(field), refusal),
        cell: () => row.place('germinated').cell,
      },
    ];
  });
  return { checks, readAs: readAsOf(table, read.decimal) };
}
