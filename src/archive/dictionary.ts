import type { Trial } from '../trial/trial.ts';
import type { Column, Table } from './table.ts';

const HEAD = [
  ['file', 'The file.'],
  ['column', 'Heading of the column.'],
  ['type', 'Kind of its values: string, number, integer or date.'],
  ['unit', 'Unit of its values; empty where they have none.'],
  ['meaning', 'What stands in the column.'],
  ['values', 'The ids that can stand there with what they mean; empty where any value can.'],
] as const;

/** The data dictionary: every column of the long tables, with the lots, treatments and traits of this trial spelt out. */
export function dictionary(trial: Trial, tables: readonly Table[]): Table {
  const values: Readonly<Record<string, string>> = {
    lot: listed(
      trial.lots.map(({ id, crop, cultivar, species }) => [
        id,
        [crop, cultivar, `(${species})`].filter(Boolean).join(' '),
      ]),
    ),
    treatment: listed(trial.treatments.map(({ id, label, control }) => [id, control ? `${label} (control)` : label])),
    trait: listed(trial.traits.map(({ column, unit }) => [column, unit ?? 'no unit given'])),
    germinated: trial.scoring.germinated ?? '',
  };
  return {
    name: 'dictionary',
    title: 'Data dictionary',
    columns: HEAD.map(([name, meaning]): Column => ({ name, type: 'string', unit: null, meaning })),
    rows: tables.flatMap((table) =>
      table.columns.map(({ name, type, unit, meaning }) => [
        `${table.name}.csv`,
        name,
        type,
        unit,
        meaning,
        values[name] || null,
      ]),
    ),
  };
}

const listed = (entries: readonly (readonly [string, string])[]): string =>
  entries.map(([id, meaning]) => `${id}: ${meaning}`).join('; ');
