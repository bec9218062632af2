import type { Cell } from './table.ts';

/**
 * A table as CSV (RFC 4180 quoting): decimal points, empty cells for null. A text that begins with `=`, `+`,
 * `-`, `@`, a tab or a line break gets an apostrophe before it, so that no spreadsheet runs it as a formula;
 * numbers are left alone. Readers take that apostrophe off again.
 *
 * @param spreadsheet with a byte order mark and CRLF, for spreadsheets that otherwise guess the encoding
 */
export function csvText(
  table: { readonly head: readonly string[]; readonly rows: readonly (readonly Cell[])[] },
  spreadsheet = false,
): string {
  const end = spreadsheet ? '\r\n' : '\n';
  const lines = [table.head, ...table.rows].map((row) => row.map(cellText).join(',') + end);
  return (spreadsheet ? '\uFEFF' : '') + lines.join('');
}

function cellText(cell: Cell): string {
  if (cell === null) return '';
  const text = typeof cell === 'number' ? String(cell) : cell.replace(/^'*[=+\-@\t\r\n]/, "'$&");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
