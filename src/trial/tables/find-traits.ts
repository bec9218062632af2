import type { Heading, Table } from '../csv/table.ts';
import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import { shown } from '../text/shown.ts';

/**
 * The trait columns among the further columns of measurements.csv: those that hold at least one number, or
 * are wanted by an outcome. A column of words or of nothing is reported and left alone.
 *
 * @param wanted headings named by outcomes, in lower case
 */
export function findTraits(table: Table, further: readonly Heading[], wanted: ReadonlySet<string>): Set<Heading> {
  const traits = new Set<Heading>();
  const rows = table.rows.filter(({ broken }) => !broken);
  for (const heading of further) {
    const cells = rows.map((row) => plainText(row.cells[heading.index] ?? '')).filter((text) => !isMissing(text));
    const words = cells.length > 0 && cells.every((text) => !/\d/.test(text));
    if (wanted.has(heading.name) || (cells.length > 0 && !words)) {
      traits.add(heading);
      continue;
    }
    table.report[words ? 'warning' : 'notice'](heading.place, {
      rule: words ? 'unknown-column' : 'empty-column',
      message: `the column ${shown(heading.label)} holds ${words ? 'words, not numbers' : 'no value'}, and was not read as a trait`,
      remedy: 'Only numbers can be compared; notes on a sowing go into events.csv or the report.',
    });
  }
  return traits;
}
