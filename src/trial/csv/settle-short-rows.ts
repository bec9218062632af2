import { WHOLE_FILE, type FileProblems } from '../file-problems.ts';
import { shown } from '../text/shown.ts';
import type { Heading, TableRow } from './table.ts';

/**
 * Rows that end before the last column. Spreadsheets leave empty cells at the end of a row out, block by
 * block, so this is no mistake as long as every column that must be there is reached: the rest is read as
 * empty, which is said once. A row that ends earlier is refused, since a cell may be missing in its middle.
 *
 * @param lastRequired index of the last column that every row must reach
 */
export function settleShortRows(
  rows: readonly TableRow[],
  lastRequired: number,
  headings: readonly Heading[],
  report: FileProblems,
): TableRow[] {
  const ended: TableRow[] = [];
  const settled = rows.map((row) => {
    if (!row.short || row.broken) return row;
    if (row.cells.length > lastRequired) {
      ended.push(row);
      return row;
    }
    const [cells, wanted] = [row.cells.length, headings.length];
    report.error(
      { ...WHOLE_FILE, line: row.line, column: 1 },
      {
        rule: 'row-too-short',
        message: `this row has ${cells} ${cells === 1 ? 'cell' : 'cells'} and there are ${wanted} headings`,
        remedy: 'Give every column its cell, also the empty ones, or save the table again from a spreadsheet.',
      },
    );
    return { ...row, broken: true };
  });

  const [first] = ended;
  const missed = first && headings.find(({ index }) => index >= first.cells.length);
  if (first && missed) {
    const more = ended.length === 1 ? 'this row ends' : `this row and ${ended.length - 1} more end`;
    report.notice(
      { ...WHOLE_FILE, line: first.line, column: 1 },
      {
        rule: 'row-ends-early',
        message: `${more} before the last column, here before ${shown(missed.label)}; what is missing was read as empty`,
        remedy: 'Spreadsheets do this where the last cells are empty; if they are not, save the table again as CSV.',
      },
    );
  }
  return settled;
}
