import { plainText } from '../text/plain-text.ts';
import { isMissing } from '../text/is-missing.ts';
import type { Table, TableRow } from './table.ts';

/** The row among the first five that holds the headings where the first row does not, or null. */
export function headingRowBelow(table: Table, known: readonly string[]): TableRow | null {
  const names = (row: TableRow) => row.cells.filter((cell) => known.includes(plainText(cell).toLowerCase()));
  return table.rows.slice(0, 5).find((row) => names(row).length >= 2) ?? null;
}

/** Whether the first row is the second line of the headings: nothing below the key heading, no number, some words. */
export function isSecondHeadingRow(row: TableRow, keyIndex: number): boolean {
  const texts = row.cells.map(plainText);
  const words = texts.filter((text) => !isMissing(text));
  return texts[keyIndex] === '' && words.length > 0 && words.every((text) => !/\d/.test(text));
}
