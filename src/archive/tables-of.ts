import type { Trial } from '../trial/trial.ts';
import { countsLong } from './counts-long.ts';
import { csvText } from './csv-text.ts';
import { dictionary } from './dictionary.ts';
import { measurementsLong } from './measurements-long.ts';
import type { Table } from './table.ts';

/** A table of the data folder as a file. */
export interface TableFile {
  /** `counts-long.csv`. */
  readonly name: string;
  readonly table: Table;
  readonly text: string;
}

/**
 * The tables made from a trial: counts and measurements (where there are any) in one tidy form whatever the
 * raw files look like, each also as a copy for spreadsheets, and the dictionary of their columns.
 */
export function tablesOf(trial: Trial): readonly TableFile[] {
  const long = [countsLong(trial), measurementsLong(trial)].filter(({ rows }) => rows.length > 0);
  const plain = [...long, dictionary(trial, long)];
  return [
    ...plain.map((table) => fileOf(table, `${table.name}.csv`, false)),
    ...plain.map((table) => fileOf(table, `${table.name}-spreadsheet.csv`, true)),
  ];
}

function fileOf(table: Table, name: string, spreadsheet: boolean): TableFile {
  return {
    name,
    table,
    text: csvText({ head: table.columns.map((column) => column.name), rows: table.rows }, spreadsheet),
  };
}
