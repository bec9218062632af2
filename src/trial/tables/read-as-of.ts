import type { Table } from '../csv/table.ts';
import type { ReadAs } from '../trial.ts';

/** What reading a table took its signs for. */
export function readAsOf(
  { name, encoding, separator }: Table,
  decimal: ReadAs['decimal'],
  layout: ReadAs['layout'] = null,
): ReadAs {
  return { file: name, encoding, separator, decimal, layout };
}
