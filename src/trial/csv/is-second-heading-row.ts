import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import type { TableRow } from './table.ts';

/** Whether the first row is the second line of the headings: nothing below the key heading, no number, some words. */
export function isSecondHeadingRow(row: TableRow, keyIndex: number): boolean {
  const texts = row.cells.map(plainText);
  const words = texts.filter((text) => !isMissing(text));
  return texts[keyIndex] === '' && words.length > 0 && words.every((text) => !/\d/.test(text));
}
