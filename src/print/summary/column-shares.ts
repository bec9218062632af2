import { textWidth } from '../../charts/text-width.ts';

/** Room of a line of small print across a sheet, and what the sides of a cell take of it, in sizes of the letters. */
const LINE = 66;
const SIDES = 1;
const BOLD = 1.07;

/**
 * Widths of a table's columns, as shares: as its longest cell needs, where all find room. Else the column gives way that
 * then makes the table higher by the fewest lines, but no word is cut. A heading may be broken between its words.
 */
export function columnShares(head: readonly string[], rows: readonly (readonly string[])[]): number[] {
  const cells = rows.map((row) => head.map((_, at) => textWidth(row[at] ?? '', 1)));
  const least = head.map((title, at) => {
    const words = [title, ...rows.map((row) => row[at] ?? '')].flatMap((text, index) =>
      text.split(' ').map((word) => (index === 0 ? BOLD : 1) * textWidth(word, 1)),
    );
    return SIDES + Math.max(...words);
  });
  const widths = least.map((width, at) => Math.max(width, SIDES + Math.max(0, ...cells.map((row) => row[at] ?? 0))));
  while (widths.reduce((sum, one) => sum + one, 0) > LINE) {
    const costs = widths.map((width, at) =>
      width - 1 < (least[at] ?? 0) ? Infinity : linesOf(cells, widths.with(at, width - 1)) - width / 1000,
    );
    const cheapest = costs.indexOf(Math.min(...costs));
    if (costs[cheapest] === Infinity) break;
    widths[cheapest] = (widths[cheapest] ?? 0) - 1;
  }
  return widths;
}

/** Lines of all rows, each as high as its highest cell. */
const linesOf = (cells: readonly (readonly number[])[], widths: readonly number[]) =>
  cells.reduce(
    (sum, row) => sum + Math.max(...row.map((cell, at) => Math.ceil(cell / ((widths[at] ?? 0) - SIDES)))),
    0,
  );
