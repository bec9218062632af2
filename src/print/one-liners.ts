import { columnWidths } from './column-widths.ts';
import type { Block, PrintDocument, Table } from './document.ts';
import { innerRooms } from './inner-rooms.ts';
import { SIZES } from './sizes.ts';
import { smallWidth } from './small-width.ts';
import { writable } from './writable.ts';

const MM = 25.4 / 72;
/** Kept free beside a text that is sure to fit, mm: many times what rounding can take. */
const SPARE = 0.2;

/**
 * For each table of a document, which rows are sure to take one line, so that their height is known. The template
 * sets the others twice: once to see how high they are.
 */
export function oneLiners({ blocks, paper, turned, density }: PrintDocument): ReadonlyMap<Table, readonly boolean[]> {
  const [wide, high] = SIZES.sheet[paper];
  const letter = SIZES.text[density] * SIZES.small * MM;
  return new Map(tablesIn(blocks, (turned ? high : wide) - 2 * SIZES.margin.x));

  function tablesIn(all: readonly Block[], room: number): (readonly [Table, readonly boolean[]])[] {
    return all.flatMap((block) =>
      block.kind === 'table'
        ? [[block, rowsOf(block, room)] as const]
        : innerRooms(block, room).flatMap(([inner, width]) => tablesIn(inner, width)),
    );
  }

  function rowsOf({ widths, rows, rowHeight }: Table, room: number): readonly boolean[] {
    if (rowHeight > 0 || widths.includes('auto')) return rows.map(() => false);
    const columns = columnWidths(widths, room).map((width) => width - 2 * SIZES.cell.x * MM - SPARE);
    return rows.map((row) =>
      row.every((cell, at) => (smallWidth(writable(cell)) ?? Infinity) * letter <= (columns[at] ?? 0)),
    );
  }
}
