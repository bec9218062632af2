import type { Cell } from './table.ts';

/**
 * A table as CSV (RFC 4180 quoting): decimal points, empty cells for null. A text that begins with `=`, `+`,
 * `-`, `@`, a tab or a line break gets an apostrophe before it, so that no spreadsheet runs it as a formula;
 * numbers are left alone. Readers take that apostrophe off again.
 *
 * @param spreadsheet with a byte order mark and CRLF, for spreadsheets that otherwise guess the encoding
 * @param exact columns whose texts must stay letter for letter, because they name something in another file
 */
export function csvText(
  table: { readonly head: readonly string[]; readonly rows: readonly (readonly Cell[])[] },
  spreadsheet = false,
  exact: readonly string[] = [],
): string {
  const end = spreadsheet ? '\r\n' : '\n';
  const isExact = table.head.map((name) => exact.includes(name));
  const lines = [table.head, ...table.rows].map(
    (row) => row.map((cell, index) => cellText(cell, isExact[index] ?? false)).join(',') + end,
  );
  return (spreadsheet ? '\uFEFF' : '') + lines.join('');
}

function cellText(cell: Cell, isExact: boolean): string {
  if (cell === null) return '';
  const text = typeof cell === 'number' || isExact ? String(cell) : cell.replace(/^'*[=+\-@\t\r\n]/, "'$&");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
