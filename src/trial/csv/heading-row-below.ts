import { plainText } from '../text/plain-text.ts';
import type { Table, TableRow } from './table.ts';

/** The row among the first five that holds the headings where the first row does not, or null. */
export function headingRowBelow(table: Table, known: readonly string[]): TableRow | null {
  const names = (row: TableRow) => row.cells.filter((cell) => known.includes(plainText(cell).toLowerCase()));
  return table.rows.slice(0, 5).find((row) => names(row).length >= 2) ?? null;
}
