import { readRows } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type { Heading } from '../csv/table.ts';
import type { FileProblems } from '../file-problems.ts';
import { measurementsCell, measurementsRow } from '../schema/measurements.ts';
import { shown } from '../text/shown.ts';
import type { Measurement, ReadAs, Trait } from '../trial.ts';
import { findTraits } from './find-traits.ts';
import { readAsOf } from './read-as-of.ts';
import { hasWhen } from './has-when.ts';
import { rowDay } from './row-day.ts';
import { rowSowing } from './row-sowing.ts';
import type { SowingNames } from './sowing-names.ts';
import { traitUnit } from './trait-unit.ts';

export interface Measurements {
  readonly traits: readonly Trait[];
  readonly measurements: readonly Measurement[];
  readonly readAs: ReadAs;
}

/**
 * measurements.csv: every further column is a trait, in the unit of its heading. Rows come back in the
 * order of sowings.csv, days and plants.
 *
 * @param wanted headings named by outcomes, in lower case
 */
export function readMeasurements(
  bytes: Uint8Array,
  report: FileProblems,
  names: SowingNames | null,
  wanted: ReadonlySet<string>,
): Measurements | null {
  const table = readTable('measurements.csv', bytes, report);
  if (!table) return null;
  const further = table.headings.filter(({ name }) => !Object.hasOwn(measurementsRow.shape, name));
  const columns = findTraits(table, further, wanted);
  const units = new Map([...columns].map((heading) => [heading, traitUnit(heading, table)]));
  const read = readRows(
    { ...table, headings: table.headings.filter((heading) => columns.has(heading) || !further.includes(heading)) },
    {
      key: 'sowing',
      row: measurementsRow,
      units: { day: 'days' },
      further: { is: (heading) => columns.has(heading), cell: measurementsCell },
    },
  );
  if (!read || !hasWhen(read, table)) return null;

  const seen = new Map<string, number>();
  const measurements = read.rows.flatMap((row): Measurement[] => {
    const sowing = rowSowing(row, report, names);
    if (sowing === null || !row.data) return [];
    const day = rowDay(row, names?.sowing(sowing) ?? null, report);
    if (day === null) return [];
    const plant = row.data.plant ?? null;
    refuseRepeated(sowing, day, plant, row.line);
    for (const [heading, value] of row.further) refuseNegative(heading, value, row.placeOf(heading));
    const values = Object.fromEntries([...row.further].map(([{ label }, value]) => [label, value]));
    return [{ sowing, day, plant, values, line: row.line }];
  });

  function refuseRepeated(sowing: string, day: number, plant: string | null, line: number): void {
    const key = JSON.stringify([sowing, day, plant]);
    const first = seen.get(key);
    if (first === undefined) {
      seen.set(key, line);
      return;
    }
    report.error(
      { line, column: 1, cell: null, field: 'plant' },
      {
        rule: 'repeated-measurement',
        message: `${plant === null ? 'sowing' : `plant ${shown(plant)} of sowing`} ${shown(sowing)} was measured on day ${day} in line ${first} already`,
        remedy: 'Number the plants of a sowing in the column "plant", or keep the row that is right.',
      },
    );
  }

  function refuseNegative(heading: Heading, value: number | null, place: Parameters<FileProblems['error']>[0]): void {
    if (value === null || value >= 0 || units.get(heading)?.startsWith('°')) return;
    report.error(place, {
      rule: 'negative',
      message: `expected a number, such as 42; found "${value}", which is below zero`,
      remedy: 'Look the number up; only temperatures can be below zero.',
    });
  }

  const traits = [...columns].map((heading) => ({ column: heading.label, unit: units.get(heading) ?? null }));
  return { traits, measurements: measurements.toSorted(inOrder(names)), readAs: readAsOf(table, read.decimal) };
}

const inOrder = (names: SowingNames | null) => (a: Measurement, b: Measurement) =>
  (names?.order(a.sowing) ?? 0) - (names?.order(b.sowing) ?? 0) || a.day - b.day || comparePlants(a.plant, b.plant);

function comparePlants(a: string | null, b: string | null): number {
  const numbers = Number(a) - Number(b);
  if (a !== null && b !== null && !Number.isNaN(numbers) && numbers !== 0) return numbers;
  return (a ?? '') < (b ?? '') ? -1 : (a ?? '') > (b ?? '') ? 1 : 0;
}
