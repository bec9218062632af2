import { WHOLE_FILE, type FileProblems, type Place } from '../file-problems.ts';
import { decodeText } from '../text/decode-text.ts';
import { refuseInvisible } from '../text/refuse-invisible.ts';
import { shown } from '../text/shown.ts';
import { cellName } from './cell-name.ts';
import { cellPlaces } from './cell-places.ts';
import { findSeparator, type Separator } from './find-separator.ts';
import { readHeading } from './read-heading.ts';
import { refuseCell } from './refuse-cell.ts';
import { splitCells, type Cell } from './split-cells.ts';
import type { Heading, Table, TableRow } from './table.ts';

const MOST_CELLS = 250_000;
const MOST_COLUMNS = 2000;

/**
 * A CSV file as headings and rows of text, whatever spreadsheet wrote it. What cannot be a table is
 * reported; null where nothing of it could be read.
 */
export function readTable(name: string, bytes: Uint8Array, report: FileProblems): Table | null {
  const decoded = decodeText(bytes);
  if ('rule' in decoded) {
    report.error(WHOLE_FILE, decoded);
    return null;
  }
  refuseInvisible(decoded.text, report);
  if (report.hasErrors) return null;

  const { separator, sepLine } = findSeparator(decoded.text);
  if (tooManyCells(decoded.text, separator)) {
    report.error(WHOLE_FILE, {
      rule: 'file-too-large',
      message: 'the table has more than 250,000 cells, more than any trial needs',
      remedy: 'Keep only the rows and columns of this trial.',
    });
    return null;
  }
  const utf8 = new TextEncoder().encode(decoded.text);
  const { rows, openQuote } = splitCells(decoded.text, utf8, separator);
  const placeOf = cellPlaces(utf8);
  if (openQuote !== null) {
    report.error(
      { ...WHOLE_FILE, ...placeOf(openQuote) },
      {
        rule: 'quote-not-closed',
        message: 'a quotation mark opens here and is never closed',
        remedy: 'Close it, or take it out; a quotation mark inside a quoted cell is written twice.',
      },
    );
    return null;
  }
  const located = rows.map((cells, index) => {
    const number = index + (sepLine ? 0 : 1);
    const place = (column: number, field: string | null): Place => ({
      ...placeOf(cells[column]?.at ?? cells.at(-1)?.at ?? 0),
      cell: cellName(column, number),
      field,
    });
    return { cells, place, line: placeOf(cells[0]?.at ?? 0).line };
  });
  const filled = located.slice(sepLine ? 1 : 0).filter(({ cells }) => !isBlank(cells));
  const [head, ...body] = filled;
  if (head === undefined) {
    report.error(WHOLE_FILE, {
      rule: 'empty-file',
      message: 'the file is empty; the first row must hold the headings',
      remedy: 'Fill it in, or take the file out of the folder.',
    });
    return null;
  }
  const columns = columnCount(head, body);
  if (columns > MOST_COLUMNS || columns * body.length > MOST_CELLS) {
    report.error(head.place(0, null), {
      rule: 'file-too-large',
      message: `the table has ${columns} columns and ${body.length} rows, more than any trial needs`,
      remedy: 'Keep only the rows and columns of this trial; many count days go into the long layout.',
    });
    return null;
  }
  const headings = readHeadings(head, body, columns, report);
  if (report.hasErrors) return null; // rows below such headings would only be misread
  const width = Math.max(0, ...headings.map(({ index }) => index + 1));
  const tableRows = body.map((row) => readRow(row, headings, width, report));
  return { name, report, headings, rows: tableRows, encoding: decoded.encoding, separator };
}

interface LocatedRow {
  readonly cells: readonly Cell[];
  readonly line: number;
  place(column: number, field: string | null): Place;
}

function isBlank(cells: readonly Cell[]): boolean {
  return cells.every(({ text }) => text.trim() === '');
}

function tooManyCells(text: string, separator: Separator): boolean {
  let cells = 0;
  for (const letter of text) if (letter === separator || letter === '\n' || letter === '\r') cells++;
  return cells > MOST_CELLS;
}

function readHeadings(head: LocatedRow, body: readonly LocatedRow[], columns: number, report: FileProblems): Heading[] {
  const headings: Heading[] = [];
  const bare: number[] = [];
  const filled = new Set<number>();
  for (const { cells } of body) cells.forEach(({ text }, index) => text.trim() !== '' && filled.add(index));
  for (let index = 0; index < columns; index++) {
    const written = head.cells[index]?.text.trim() ?? '';
    if (/[\r\n]/.test(written)) {
      report.error(head.place(index, null), {
        rule: 'two-line-heading',
        message: `the heading ${shown(written)} runs over two lines`,
        remedy: 'Write each heading in one line of one cell, such as "day 3".',
      });
    } else if (written !== '') headings.push(readHeading(written, index, head.place(index, null)));
    else if (filled.has(index)) bare.push(index);
  }
  const [first] = bare;
  if (first !== undefined) {
    const named = bare.map((index) => cellName(index, 1).slice(0, -1)).join(', ');
    report.error(head.place(first, null), {
      rule: 'heading-missing',
      message: `${bare.length === 1 ? `column ${named} has` : `columns ${named} have`} values but no heading, as happens with merged cells and with titles above a table`,
      remedy: 'Delete rows above the headings, unmerge cells, and give every column its own heading in one row.',
    });
  }
  return headings;
}

/** Columns that the table means to have: those of the heading row, and any that most rows fill. */
function columnCount(head: LocatedRow, body: readonly LocatedRow[]): number {
  const widths = body
    .map(({ cells }) => cells.findLastIndex(({ text }) => text.trim() !== '') + 1)
    .toSorted((a, b) => a - b);
  return Math.max(head.cells.length, widths[Math.floor((widths.length - 1) / 2)] ?? 0);
}

function readRow(row: LocatedRow, headings: readonly Heading[], width: number, report: FileProblems): TableRow {
  const { cells, line } = row;
  const filled = cells.findLastIndex(({ text }) => text.trim() !== '') + 1;
  const broken = filled > width;
  if (broken) {
    report.error(row.place(width, null), {
      rule: 'row-too-long',
      message: `this row has ${filled} cells and there ${width === 1 ? 'is 1 heading' : `are ${width} headings`}`,
      remedy:
        'Look for a comma inside a number or a note: write decimals with a point and put notes into quotation marks.',
    });
  }
  const refused = new Set<number>();
  for (const { index, place } of broken ? [] : headings) {
    const refusal = refuseCell(cells[index]?.text ?? '');
    if (!refusal) continue;
    refused.add(index);
    report.error(row.place(index, place.field), refusal);
  }
  return {
    line,
    cells: cells.map(({ text }) => text),
    broken,
    short: cells.length < width,
    refused,
    place: ({ index, place: { field } }) => row.place(index, field),
  };
}
