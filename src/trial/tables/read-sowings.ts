import { readRows, type ReadRow } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import type * as z from 'zod';
import type { FileProblems } from '../file-problems.ts';
import { sowingsRow } from '../schema/sowings.ts';
import { shown } from '../text/shown.ts';
import { unknownName } from '../text/unknown-name.ts';
import { unknownTreatment } from '../text/unknown-treatment.ts';
import type { ReadAs } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import { readAsOf } from './read-as-of.ts';

type SowingRow = ReadRow<z.infer<typeof sowingsRow>>;

export interface SowingsTable {
  readonly rows: readonly SowingRow[];
  /** Id by id and by label. */
  readonly idOf: ReadonlyMap<string, string>;
  readonly hasTreatments: boolean;
  readonly readAs: ReadAs;
}

/** sowings.csv: one row a sowing, checked row by row and against trial.yaml; treatments are set by `settleTreatments`. */
export function readSowings(bytes: Uint8Array, report: FileProblems, context: TrialContext): SowingsTable | null {
  const table = readTable('sowings.csv', bytes, report);
  const read =
    table && readRows(table, { key: 'sowing', row: sowingsRow, units: { stored: 'years', mass: 'g', soak: 'h' } });
  if (!table || !read) return null;

  if (!read.has('seeds') && !read.has('mass')) {
    report.error(
      { line: table.headings[0]?.place.line ?? 1, column: 1, cell: null, field: 'seeds' },
      {
        rule: 'missing-column',
        message: 'there is neither a column "seeds" nor a column "mass"',
        remedy: 'Add the column "seeds" with the number of seeds sown.',
      },
    );
  }
  const idOf = readNames(read.rows, report);
  for (const row of read.rows) checkReferences(row, report, context);
  const readAs = readAsOf(table, read.decimal);
  return { rows: read.rows, idOf, hasTreatments: read.rows.some((row) => row.data?.treatment), readAs };
}

function readNames(rows: readonly SowingRow[], report: FileProblems): Map<string, string> {
  const ids = new Map<string, number>();
  for (const row of rows) {
    const id = row.text('sowing');
    const first = ids.get(id);
    if (first === undefined) ids.set(id, row.line);
    else if (row.data) {
      report.error(row.place('sowing'), {
        rule: 'repeated-sowing',
        message: `sowing ${shown(id)} stands in line ${first} already`,
        remedy: 'Give each sowing its own id.',
      });
    }
  }
  const idOf = new Map([...ids.keys()].map((id) => [id, id]));
  for (const row of rows) {
    const label = row.data?.label;
    if (!label || !row.data) continue;
    const other = idOf.get(label);
    if (other === undefined) idOf.set(label, row.data.sowing);
    else if (other !== row.data.sowing) {
      report.error(row.place('label'), {
        rule: 'label-taken',
        message: `the label ${shown(label)} is also ${ids.has(label) ? 'the id' : 'the label'} of sowing ${shown(other)}`,
        remedy: 'Use a label that names one sowing only; counts could belong to either.',
      });
    }
  }
  return idOf;
}

function checkReferences(row: SowingRow, report: FileProblems, { lots, treatments }: TrialContext): void {
  if (!row.data) return;
  const { lot, treatment } = row.data;
  if (lots && !lots.has(lot)) report.error(row.place('lot'), unknownName('lot', lot, 'trial.yaml', lots.keys()));
  if (treatment && treatments && !treatments.has(treatment)) {
    report.error(row.place('treatment'), unknownTreatment(treatment, treatments));
  }
}
