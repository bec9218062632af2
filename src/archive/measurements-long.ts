import type { Trial } from '../trial/trial.ts';
import { SOWING_COLUMNS, sowingCells } from './sowing-columns.ts';
import type { Column, Table } from './table.ts';

const COLUMNS: readonly Column[] = [
  ...SOWING_COLUMNS,
  {
    name: 'plant',
    type: 'string',
    unit: null,
    meaning: 'The plant within its sowing; empty: one measurement of the whole sowing.',
  },
  {
    name: 'trait',
    type: 'string',
    unit: null,
    meaning: 'What was measured: a heading of measurements.csv without its unit.',
  },
  { name: 'unit', type: 'string', unit: null, meaning: 'Unit of the value, as the heading gives it.' },
  {
    name: 'value',
    type: 'number',
    unit: 'as in the column unit',
    meaning: 'The measurement; empty: not measured, which is not zero.',
  },
];

/** Every measurement, one row a plant (or sowing) and trait; in the order of the raw file. */
export function measurementsLong(trial: Trial): Table {
  const sowings = new Map(trial.sowings.map((sowing) => [sowing.id, sowing]));
  return {
    name: 'measurements-long',
    title: 'Measurements, one row a plant and trait',
    columns: COLUMNS,
    rows: trial.measurements.flatMap(({ sowing: id, day, plant, values }) => {
      const sowing = sowings.get(id);
      if (!sowing) return [];
      return trial.traits.map(({ column, unit }) => [
        ...sowingCells(sowing, day),
        plant,
        column,
        unit,
        values[column] ?? null,
      ]);
    }),
  };
}
