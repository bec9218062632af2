import type { Heading, Table } from './table.ts';
import { plainText } from '../text/plain-text.ts';

/**
 * How the numbers of a table mark decimals; null where none has any. A comma counts only where cells are
 * separated by something else. Both marks in one table are reported: 1.234 could then be a thousand or a bit over one.
 *
 * @param numeric headings of the columns that hold numbers
 */
export function decimalMark(table: Table, numeric: readonly Heading[]): '.' | ',' | null {
  const marks = { '.': 0, ',': 0, thousands: 0 };
  for (const row of table.rows.filter(({ broken }) => !broken)) {
    for (const heading of numeric) {
      const text = plainText(row.cells[heading.index] ?? '');
      const mark = /^-?\d*([.,])\d+$/.exec(text)?.[1];
      if (mark !== '.' && mark !== ',') continue;
      marks[mark]++;
      if (/^-?\d{1,3},\d{3}$/.test(text)) marks.thousands++;
      if (table.separator !== ',' && marks['.'] > 0 && marks[','] > 0) {
        table.report.error(row.place(heading), {
          rule: 'mixed-decimals',
          message: `numbers in this file use both decimal points and decimal commas; found "${text}" after the other kind`,
          remedy: 'Use one of the two throughout the file.',
        });
        return ',';
      }
    }
  }
  const comma = table.separator === ';' || (table.separator === '\t' && marks.thousands < marks[',']);
  if (comma && marks[','] > 0) return ',';
  return marks['.'] > 0 ? '.' : null;
}
