import type { Measurement, Trial } from '../trial/trial.ts';

/**
 * The same trial with the rows of its tables in one order, so that the order in which a file lists
 * its rows changes no digit of the analysis. Lots, treatments, outcomes and traits keep theirs: it
 * is the author's order of telling.
 */
export function sortedTrial(trial: Trial): Trial {
  return {
    ...trial,
    sowings: sortedBy(trial.sowings, [({ id }) => id]),
    counts: sortedBy(trial.counts, [({ sowing }) => sowing, ({ day }) => day]),
    measurements: sortedBy(trial.measurements, [
      ({ sowing }) => sowing,
      ({ day }) => day,
      ({ plant }) => plant ?? '',
      ...trial.traits.map(
        ({ column }) =>
          ({ values }: Measurement) =>
            values[column] ?? -Infinity,
      ),
    ]),
    weighings: sortedBy(trial.weighings, [
      ({ lot }) => lot,
      ({ treatment }) => treatment ?? '',
      ({ batch }) => batch ?? '',
      ({ repeat }) => repeat ?? '',
      ({ stage }) => stage,
      ({ mass }) => mass,
    ]),
  };
}

/** By the first key, where that is the same by the second, and so on. */
function sortedBy<Row>(rows: readonly Row[], keys: readonly ((row: Row) => string | number)[]): readonly Row[] {
  return rows.toSorted((a, b) => {
    for (const key of keys) {
      const [left, right] = [key(a), key(b)];
      if (left !== right) return left < right ? -1 : 1;
    }
    return 0;
  });
}
