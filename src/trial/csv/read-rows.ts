import * as z from 'zod';
import type { Place } from '../file-problems.ts';
import { issueRefusals } from '../schema/issue-refusals.ts';
import { convertUnit } from '../text/convert-unit.ts';
import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import type { Unit } from '../text/read-unit.ts';
import { decimalMark } from './decimal-mark.ts';
import { findColumns, type Columns } from './find-columns.ts';
import { isNumeric } from './is-numeric.ts';
import type { Heading, Table, TableRow } from './table.ts';

/** What a table's columns are. */
export interface RowsKind<Row extends z.ZodObject> {
  /** Column in which every row has its name. */
  readonly key: string;
  readonly row: Row;
  /** Unit in which a column's numbers are kept, by column. */
  readonly units?: Readonly<Record<string, string>>;
  /** Further columns, all of one kind: count days, traits. `headed`: how one is headed, for whoever mistyped it. */
  readonly further?: {
    readonly is: (heading: Heading) => boolean;
    readonly cell: z.ZodType<number | null>;
    readonly headed?: string;
  };
}

export interface ReadRow<Data> {
  readonly line: number;
  /** Null where a cell of the known columns was refused; that was reported. */
  readonly data: Data | null;
  /** Numbers of the further columns; a refused cell has no entry. */
  readonly further: ReadonlyMap<Heading, number | null>;
  /** What stands in a known column, also in a refused row; empty where there is no such column. */
  text(column: string): string;
  place(column: string): Place;
  placeOf(heading: Heading): Place;
  textOf(heading: Heading): string;
}

export interface ReadRows<Data> {
  readonly rows: readonly ReadRow<Data>[];
  readonly further: readonly Heading[];
  readonly decimal: '.' | ',' | null;
  has(column: string): boolean;
}

/** Checks every row of a table against its kind; null where a column that must be there is missing. */
export function readRows<Row extends z.ZodObject>(table: Table, kind: RowsKind<Row>): ReadRows<z.infer<Row>> | null {
  const columns = findColumns(table, kind);
  if (columns === null) return null;
  const cells = new Map(Object.entries(kind.row.shape).map(([column, schema]) => [column, cellReader(schema)]));
  const furtherCell = cellReader(kind.further?.cell ?? z.null());
  const decimal = decimalMark(table, [...columns.numeric, ...columns.further]);
  return {
    rows: columns.rows.map((row) => readRow(row, table, kind, { ...columns, cells, furtherCell }, decimal)),
    further: columns.further,
    decimal,
    has: (column) => columns.known.has(column),
  };
}

function readRow<Row extends z.ZodObject>(
  row: TableRow,
  { report }: Table,
  kind: RowsKind<Row>,
  { known, further, units, cells, furtherCell }: Columns & Cells,
  decimal: '.' | ',' | null,
): ReadRow<z.infer<Row>> {
  const textOf = ({ index }: Heading) => row.cells[index] ?? '';
  const place = (column: string): Place => {
    const heading = known.get(column);
    return heading ? row.place(heading) : { line: row.line, column: 1, cell: null, field: column };
  };
  const refuseIn = (heading: Heading, schema: z.ZodType, issues: readonly z.core.$ZodIssue[]) => {
    if (row.refused.has(heading.index)) return; // said already
    for (const { refusal } of issues.flatMap((issue) => issueRefusals(issue, schema))) {
      report.error(row.place(heading), refusal);
    }
  };

  let ok = !row.broken && row.refused.size === 0;
  const data: Record<string, unknown> = {};
  for (const [column, { numeric, read }] of cells) {
    const heading = known.get(column);
    if (!heading || row.broken) continue;
    const result = read(valueOf(textOf(heading), numeric ? decimal : null));
    if (result.success) data[column] = inUnit(result.data, units.get(column));
    else {
      const issues = result.error.issues.map((issue) => ({ ...issue, path: [column, ...issue.path] }));
      refuseIn(heading, kind.row, issues);
    }
    ok &&= result.success;
  }

  const numbers = new Map<Heading, number | null>();
  for (const heading of row.broken ? [] : further) {
    const result = furtherCell.read(valueOf(textOf(heading), decimal));
    if (result.success) numbers.set(heading, result.data);
    else refuseIn(heading, furtherCell.schema, result.error.issues);
  }
  return {
    line: row.line,
    data: ok ? (data as z.infer<Row>) : null,
    further: numbers,
    text: (column) => plainText(known.has(column) ? textOf(known.get(column) as Heading) : ''),
    place,
    placeOf: row.place,
    textOf,
  };
}

interface Cells {
  readonly cells: ReadonlyMap<string, CellReader<unknown>>;
  readonly furtherCell: CellReader<number | null>;
}

/** How the cells of one column are checked. */
interface CellReader<Value> {
  readonly schema: z.ZodType<Value>;
  readonly numeric: boolean;
  read(text: string | null): z.ZodSafeParseResult<Value>;
}

/** Checks each text once: a column says the same few things over and over. */
function cellReader<Value>(schema: z.ZodType<Value>): CellReader<Value> {
  const known = new Map<string | null, z.ZodSafeParseResult<Value>>();
  const read = (text: string | null) => {
    const result = known.get(text) ?? schema.safeParse(text, { reportInput: true });
    known.set(text, result);
    return result;
  };
  return { schema, numeric: isNumeric(schema), read };
}

/** A cell as the schema wants it: null where it is missing, decimals by point in columns of numbers. */
function valueOf(text: string, decimal: '.' | ',' | null): string | null {
  if (isMissing(plainText(text))) return null;
  if (decimal !== ',') return text;
  const plain = plainText(text);
  return /^-?\d*,\d+$/.test(plain) ? plain.replace(',', '.') : text;
}

function inUnit(value: unknown, units: { readonly from: Unit; readonly to: Unit } | undefined): unknown {
  return units && typeof value === 'number' ? convertUnit(value, units.from, units.to) : value;
}
