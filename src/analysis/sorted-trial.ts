import type { Trial } from '../trial/trial.ts';

/**
 * The same trial with the rows of its tables in one order, so that the order in which a file lists
 * its rows changes no digit of the analysis. Lots, treatments, outcomes and traits keep theirs: it
 * is the author's order of telling.
 */
export function sortedTrial(trial: Trial): Trial {
  return {
    ...trial,
    sowings: sortedBy(trial.sowings, ({ id }) => [id]),
    counts: sortedBy(trial.counts, ({ sowing, day }) => [sowing, day]),
    measurements: sortedBy(trial.measurements, ({ sowing, day, plant, values }) => [
      sowing,
      day,
      plant ?? '',
      ...trial.traits.map(({ column }) => values[column] ?? -Infinity),
    ]),
    weighings: sortedBy(trial.weighings, ({ lot, treatment, batch, repeat, stage, mass }) => [
      lot,
      treatment ?? '',
      batch ?? '',
      repeat ?? '',
      stage,
      mass,
    ]),
  };
}

type Key = readonly (string | number)[];

function sortedBy<Row>(rows: readonly Row[], keyOf: (row: Row) => Key): readonly Row[] {
  return rows
    .map((row) => ({ row, key: keyOf(row) }))
    .sort((a, b) => compareKeys(a.key, b.key))
    .map(({ row }) => row);
}

function compareKeys(a: Key, b: Key): number {
  for (const [index, left] of a.entries()) {
    const right = b[index];
    if (right !== undefined && left !== right) return left < right ? -1 : 1;
  }
  return 0;
}
