import type { ReadRow } from '../csv/read-rows.ts';
import type { FileProblems } from '../file-problems.ts';
import { unknownName } from '../text/unknown-name.ts';
import type { SowingNames } from './sowing-names.ts';

/**
 * Id of the sowing that a row names by id or label, or null where there is none of that name, which is reported.
 *
 * @param names null where sowings.csv could not be read: any name is then taken as it is
 */
export function rowSowing(row: ReadRow<unknown>, report: FileProblems, names: SowingNames | null): string | null {
  const name = row.text('sowing');
  const id = names === null ? name : names.idOf(name);
  if (id !== undefined) return id;
  if (row.data) report.error(row.place('sowing'), unknownName('sowing', name, 'sowings.csv', names?.names ?? []));
  return null;
}
