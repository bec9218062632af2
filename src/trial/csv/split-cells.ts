import { parse } from 'csv-parse/browser/esm/sync';
import type { Separator } from './find-separator.ts';

/** Text of a cell as written, quotes taken off, and its first byte in the UTF-8 file. */
export interface Cell {
  readonly text: string;
  readonly at: number;
}

/**
 * Cuts a table into rows of cells, all of them text, blank lines included; nothing is filled in, dropped or
 * guessed. A quote that is never closed gives the place where it opened.
 *
 * @param bytes the text as UTF-8, for the places of the cells
 */
export function splitCells(
  text: string,
  bytes: Uint8Array,
  separator: Separator,
): { readonly rows: readonly (readonly Cell[])[]; readonly openQuote: number | null } {
  const rows: Cell[][] = [];
  let next = 0; // first byte of the cell to come
  const options = {
    delimiter: separator,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    relax_quotes: true,
    cast: (cell: string, { index, bytes: end }: { index: number; bytes: number }) => {
      if (index === 0) rows.push([]);
      rows.at(-1)?.push({ text: cell, at: next });
      next = end + (bytes[end] === 13 && bytes[end + 1] === 10 ? 2 : 1);
      return null; // only the cells gathered here are used
    },
  };
  try {
    parse(text, options);
    return { rows, openQuote: null };
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'CSV_QUOTE_NOT_CLOSED')) throw error;
    return { rows, openQuote: next };
  }
}
