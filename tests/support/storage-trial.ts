import type { Trial } from '../../src/trial/trial.ts';
import { makeCount, makeOutcome, makeSowing, makeTrial } from './make-trial.ts';

type Jars = readonly (readonly [germinated: number, seeds: number])[];

/**
 * A finished storage series of one lot, a sowing a jar: `[germinated, seeds]` by treatment and year. Jars under
 * `start` are of year 0 and of every treatment.
 * `storageTrial({ start: { 0: [[46, 50], [47, 50]] }, packet: { 1: [[40, 50], [41, 50]] }, jar: { 1: … } })`
 */
export function storageTrial(
  series: Readonly<Record<string, Readonly<Record<number, Jars>>>>,
  parts: Partial<Trial> = {},
): Trial {
  const rows = Object.entries(series).flatMap(([treatment, years]) =>
    Object.entries(years).flatMap(
      ([year, jars]) =>
      jars.map(([germinated, seeds], index) => ({ id: `${treatment}-${year}-${index + 1}`, treatment, year: Number(year), germinated, seeds })), // prettier-ignore
    ),
  );
  return makeTrial({
    outcomes: [makeOutcome({ id: 'keeping', measure: 'storage' })],
    sowings: rows.map(({ id, treatment, year, seeds }) => ({
      ...makeSowing(id, treatment, { seeds, stored: year, batch: treatment === 'start' ? null : id }),
      treatment: treatment === 'start' ? null : treatment,
    })),
    counts: rows.map(({ id, germinated }) => makeCount(id, 14, germinated)),
    ...parts,
  });
}

/** So many jars of 50 seeds each a year, all with the same count. */
export const alike = (years: Readonly<Record<number, number>>, jars = 2): Readonly<Record<number, Jars>> =>
  Object.fromEntries(Object.entries(years).map(([year, count]) => [year, Array.from({ length: jars }, () => [count, 50] as const)])); // prettier-ignore
