import { readRows, type ReadRow } from '../csv/read-rows.ts';
import type { Heading, Table } from '../csv/table.ts';
import { wideCountsCell, wideCountsRow } from '../schema/counts.ts';
import { categoriesOf, type Check } from './check.ts';
import { countDay, type CountDay } from './count-day.ts';
import { dayOf } from './day-of.ts';
import { isDayHeading } from './is-day-heading.ts';
import { readAsOf } from './read-as-of.ts';
import type { ReadChecks } from './read-counts.ts';
import { rowSowing } from './row-sowing.ts';
import type { SowingNames } from './sowing-names.ts';

/** The wide layout: one row a sowing, one column a count day. */
export function readWideCounts(table: Table, names: SowingNames | null): ReadChecks | null {
  const { report } = table;
  const read = readRows(table, {
    key: 'sowing',
    row: wideCountsRow,
    further: {
      is: isDayHeading,
      cell: wideCountsCell,
      headed: 'A count day is headed by its number or its date, such as "day 5" or "2026-04-09".',
    },
  });
  if (!read) return null;

  const days = new Map(read.further.map((heading) => [heading, countDay(heading, table.separator !== ',', report)]));
  const checks = read.rows.flatMap((row) => {
    const sowing = rowSowing(row, report, names);
    if (sowing === null || !row.data) return [];
    return read.further.flatMap((heading) => checkOf(row, heading, sowing, days.get(heading) ?? null));
  });

  function checkOf(
    row: ReadRow<{ readonly scorer?: string | null | undefined }>,
    heading: Heading,
    sowing: string,
    when: CountDay | null,
  ): Check[] {
    const germinated = row.further.get(heading);
    if (when === null || germinated === undefined) return [];
    const day =
      'day' in when ? when.day : dayOf(when.date, names?.sowing(sowing) ?? null, report, row.placeOf(heading));
    if (day === null) return [];
    return [
      {
        sowing,
        day,
        germinated,
        ...categoriesOf({}),
        scorer: row.data?.scorer ?? null,
        note: null,
        file: table.name,
        line: row.line,
        empty: germinated === null && row.textOf(heading).trim() === '',
        say: (level, _field, refusal) => report[level](row.placeOf(heading), refusal),
        cell: () => row.placeOf(heading).cell,
      },
    ];
  }
  return { checks, readAs: readAsOf(table, read.decimal, 'wide') };
}
