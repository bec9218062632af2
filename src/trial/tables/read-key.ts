import { readRows } from '../csv/read-rows.ts';
import { readTable } from '../csv/read-table.ts';
import { WHOLE_FILE, type FileProblems } from '../file-problems.ts';
import { keyRow } from '../schema/key.ts';
import { shown } from '../text/shown.ts';
import { unknownName } from '../text/unknown-name.ts';
import { unknownTreatment } from '../text/unknown-treatment.ts';
import type { ReadAs } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import { readAsOf } from './read-as-of.ts';

/**
 * key.csv: the treatment of each sowing, kept apart until the last count.
 *
 * @param idOf id of a sowing by its id or label
 * @param needed ids of the sowings that have no treatment in sowings.csv
 * @returns treatment by sowing id; a refused row has null
 */
export function readKey(
  bytes: Uint8Array,
  report: FileProblems,
  context: TrialContext,
  idOf: ReadonlyMap<string, string> | null,
  needed: readonly string[],
): { readonly treatments: ReadonlyMap<string, string | null>; readonly readAs: ReadAs } | null {
  const table = readTable('key.csv', bytes, report);
  const read = table && readRows(table, { key: 'sowing', row: keyRow });
  if (!table || !read) return null;

  const treatments = new Map<string, string | null>();
  for (const row of read.rows) {
    const name = row.text('sowing');
    const id = idOf === null ? name : idOf.get(name);
    if (id === undefined) {
      if (row.data) report.error(row.place('sowing'), unknownName('sowing', name, 'sowings.csv', idOf?.keys() ?? []));
      continue;
    }
    if (treatments.has(id)) {
      report.error(row.place('sowing'), {
        rule: 'repeated-sowing',
        message: `sowing ${shown(id)} stands here for the second time`,
        remedy: 'Keep the row that is right and take the other out.',
      });
    }
    const treatment = row.data?.treatment ?? null;
    treatments.set(id, treatment);
    if (treatment !== null && context.treatments && !context.treatments.has(treatment)) {
      report.error(row.place('treatment'), unknownTreatment(treatment, context.treatments));
    }
  }
  const missing = needed.filter((id) => !treatments.has(id));
  if (missing.length > 0) {
    report.error(WHOLE_FILE, {
      rule: 'treatment-missing',
      message: `there is no row for ${missing.map((id) => shown(id)).join(', ')}`,
      remedy: 'Give every sowing its treatment, here or in sowings.csv.',
    });
  }
  return { treatments, readAs: readAsOf(table, read.decimal) };
}
