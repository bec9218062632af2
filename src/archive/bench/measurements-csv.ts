import type { BenchSession } from '../../trial/bench/bench.ts';
import { csvText } from '../csv-text.ts';
import { inSowingOrder } from './in-sowing-order.ts';
import { whenCells, whenColumns } from './when-columns.ts';

/**
 * measurements.csv of what was recorded: a row a plant (or whole sowing), a column a trait with its unit in brackets.
 * Traits that nothing was measured of are left out. Null: nothing was measured.
 *
 * Checked against: the project's own reader, which gives back the same records.
 */
export function measurementsCsv({ trial, records }: BenchSession): string | null {
  const rows = Object.values(records.measurements)
    .filter(({ values }) => Object.values(values).some((value) => value !== null))
    .sort(inSowingOrder(trial));
  const traits = records.traits.filter(({ column }) => rows.some(({ values }) => (values[column] ?? null) !== null));
  if (traits.length === 0) return null;
  return csvText(
    {
      head: [
        'sowing',
        ...whenColumns(trial),
        'plant',
        ...traits.map(({ column, unit }) => (unit === null ? column : `${column} (${unit})`)),
      ],
      rows: rows.map(({ sowing, day, plant, values }) => [
        sowing,
        ...whenCells(trial, sowing, day),
        plant,
        ...traits.map(({ column }) => values[column] ?? null),
      ]),
    },
    false,
    ['sowing'],
  );
}
