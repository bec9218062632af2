import * as z from 'zod';
import { WHOLE_FILE } from '../file-problems.ts';
import { didYouMean } from '../text/did-you-mean.ts';
import { nearest } from '../text/nearest.ts';
import { readUnit, type Unit } from '../text/read-unit.ts';
import { shown } from '../text/shown.ts';
import { settleShortRows } from './settle-short-rows.ts';
import { headingRowBelow } from './heading-row-below.ts';
import { isNumeric } from './is-numeric.ts';
import { isSecondHeadingRow } from './is-second-heading-row.ts';
import { headingUnit } from './heading-unit.ts';
import type { RowsKind } from './read-rows.ts';
import { refuseRepeatedHeadings } from './refuse-repeated-headings.ts';
import type { Heading, Table, TableRow } from './table.ts';

export interface Columns {
  readonly known: ReadonlyMap<string, Heading>;
  /** Those of the known columns that hold numbers. */
  readonly numeric: readonly Heading[];
  readonly further: readonly Heading[];
  readonly units: ReadonlyMap<string, { readonly from: Unit; readonly to: Unit }>;
  /** Without a second line of headings. */
  readonly rows: readonly TableRow[];
}

/**
 * Which heading is which column. Unknown ones are reported as warnings, so that nothing is dropped in
 * silence; null where a column that must be there is missing.
 */
export function findColumns(table: Table, kind: RowsKind<z.ZodObject>): Columns | null {
  const { headings, report } = table;
  const shape = kind.row.shape;
  refuseRepeatedHeadings(table);

  const known = new Map<string, Heading>();
  const further: Heading[] = [];
  const unknown: Heading[] = [];
  for (const heading of headings) {
    if (Object.hasOwn(shape, heading.name)) known.set(heading.name, heading);
    else if (kind.further?.is(heading)) further.push(heading);
    else unknown.push(heading);
  }
  const required = Object.keys(shape).filter((name) => !z.safeParse(shape[name], undefined).success);
  const missing = required.filter((name) => !known.has(name));
  if (missing.length > 0) {
    refuseMissing(table, missing, unknown, Object.keys(shape));
    return null;
  }
  const free = Object.keys(shape).filter((name) => !known.has(name));
  for (const { label, place } of unknown) {
    report.warning(place, {
      rule: 'unknown-column',
      message: `the column ${shown(label)} is not known here and was not read`,
      remedy: [kind.further?.headed, didYouMean(label, free, 'further column')].filter(Boolean).join(' '),
    });
  }

  const numeric = [...known.values()].filter(({ name }) => isNumeric(shape[name] as z.core.$ZodType));
  const lastIndex = Math.max(...required.map((name) => known.get(name)?.index ?? 0));
  const keyIndex = known.get(kind.key)?.index ?? -1;
  const [first, ...others] = table.rows;
  const second = first !== undefined && isSecondHeadingRow(first, keyIndex);
  if (second) {
    report.error({ ...WHOLE_FILE, line: first.line, column: 1 }, TWO_LINES);
  }
  return {
    known,
    numeric,
    further,
    units: unitsOf(table, kind, known),
    rows: settleShortRows(second ? others : table.rows, lastIndex, headings, report),
  };
}

const TWO_LINES = {
  rule: 'two-line-heading',
  message: 'the headings run over two rows',
  remedy: 'Keep one row of headings; units go into brackets behind the name, such as "height (cm)".',
};

function refuseMissing(table: Table, missing: readonly string[], unknown: readonly Heading[], all: readonly string[]) {
  const { report, headings } = table;
  const below = headingRowBelow(table, all);
  if (below !== null) {
    report.error(
      { ...WHOLE_FILE, line: below.line, column: 1 },
      {
        rule: 'two-line-heading',
        message: 'the headings stand in this row, and something else above them',
        remedy: 'Delete the rows above the headings; keep one row of headings.',
      },
    );
    return;
  }
  const found = headings.map(({ label }) => shown(label)).join(', ');
  for (const name of missing) {
    const close = nearest(
      name,
      unknown.map(({ label }) => label),
    );
    report.error(
      { ...WHOLE_FILE, line: headings[0]?.place.line ?? 1, column: 1, field: name },
      {
        rule: 'missing-column',
        message: `there is no column ${shown(name)}; the headings are ${found === '' ? 'empty' : found}`,
        remedy: close === null ? `Add the column ${shown(name)}.` : `Should ${shown(close)} be ${shown(name)}?`,
      },
    );
  }
}

function unitsOf({ report }: Table, { row, units = {} }: RowsKind<z.ZodObject>, known: ReadonlyMap<string, Heading>) {
  const found = new Map<string, { from: Unit; to: Unit }>();
  for (const heading of known.values()) {
    const to = Object.hasOwn(units, heading.name) ? readUnit(units[heading.name] ?? '') : null;
    if (to !== null) {
      const from = headingUnit(heading, to, report);
      if (from !== null) found.set(heading.name, { from, to });
    } else if (
      heading.unit !== null &&
      readUnit(heading.unit) &&
      isNumeric(row.shape[heading.name] as z.core.$ZodType)
    ) {
      report.error(heading.place, {
        rule: readUnit(heading.unit)?.name === '%' ? 'percentage' : 'unit-not-expected',
        message: `this column holds numbers of seeds; found the unit ${shown(heading.unit)}`,
        remedy: 'Write the numbers that were counted, and no unit in the heading.',
      });
    }
  }
  return found;
}
