import { readRows, type ReadRow } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type { FileProblems } from '../file-problems.ts';
import { weighingsRow } from '../schema/weighings.ts';
import { unknownName } from '../text/unknown-name.ts';
import { unknownTreatment } from '../text/unknown-treatment.ts';
import type { ReadAs, Weighing } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import { readAsOf } from './read-as-of.ts';

/** weighings.csv, masses in grams. */
export function readWeighings(
  bytes: Uint8Array,
  report: FileProblems,
  context: TrialContext,
): { readonly weighings: readonly Weighing[]; readonly readAs: ReadAs } | null {
  const table = readTable('weighings.csv', bytes, report);
  const units = { mass: 'g', container: 'g', 'scale step': 'g' };
  const read = table && readRows(table, { key: 'lot', row: weighingsRow, units });
  if (!table || !read) return null;

  const seen = new Map<string, number>();
  const weighings = read.rows.flatMap((row): Weighing[] => {
    if (!row.data) return [];
    const { lot, treatment, stage, mass, container, repeat, batch, date, 'scale step': scaleStep } = row.data;
    const weighing: Weighing = {
      lot,
      treatment: treatment ?? null,
      stage,
      mass,
      container: container ?? null,
      repeat: repeat ?? null,
      scaleStep: scaleStep ?? null,
      batch: batch ?? null,
      date: date ?? null,
      line: row.line,
    };
    checkWeighing(weighing, row, report, context);
    const key = JSON.stringify([lot, treatment, stage, batch, repeat].map((part) => part ?? null));
    const first = seen.get(key);
    if (first !== undefined) {
      report.error(row.place('stage'), {
        rule: 'repeated-weighing',
        message: `the same seeds were weighed at the stage "${stage}" in line ${first} already`,
        remedy: 'Number the weighings in a column "repeat", or keep the row that is right.',
      });
    } else seen.set(key, row.line);
    return [weighing];
  });
  return { weighings, readAs: readAsOf(table, read.decimal) };
}

function checkWeighing(
  { lot, treatment, stage, mass, container }: Weighing,
  row: ReadRow<unknown>,
  report: FileProblems,
  { lots, treatments }: TrialContext,
): void {
  if (lots && !lots.has(lot)) report.error(row.place('lot'), unknownName('lot', lot, 'trial.yaml', lots.keys()));
  if (treatment !== null && treatments && !treatments.has(treatment)) {
    report.error(row.place('treatment'), unknownTreatment(treatment, treatments));
  }
  if (treatment === null && stage === 'after') {
    report.error(row.place('treatment'), {
      rule: 'treatment-missing',
      message: 'a weighing after treatment has no treatment',
      remedy: 'Write which treatment these seeds had.',
    });
  }
  if (mass <= (container ?? 0)) {
    report.error(row.place('mass'), {
      rule: 'no-seed-mass',
      message:
        container === null
          ? `found a mass of ${mass} g; seed weighs something`
          : `found ${mass} g with the container, not more than the ${container} g of the container alone`,
      remedy: 'Look both masses up, and their units in the headings.',
    });
  }
}
