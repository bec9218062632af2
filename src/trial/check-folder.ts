import { WHOLE_FILE } from './file-problems.ts';
import type { FolderProblems } from './folder-problems.ts';
import { ID } from './schema/field/id-field.ts';
import { nearest } from './text/nearest.ts';
import { shown } from './text/shown.ts';

/** Data files of a trial: what is read, digested and published. */
export const DATA_FILES = [
  'trial.yaml',
  'lots.yaml',
  'people.yaml',
  'plan.yaml',
  'sowings.csv',
  'key.csv',
  'counts.csv',
  'fates.csv',
  'measurements.csv',
  'weighings.csv',
  'events.csv',
];
const OTHERS = ['report.mdx', 'report.md'];

/** Reports a folder whose name cannot be an address, and files that nothing reads: a slip in a name would hide the data. */
export function checkFolder(id: string, files: ReadonlyMap<string, Uint8Array>, problems: FolderProblems): void {
  if (!ID.test(id) || id.includes('..')) {
    problems.in('').error(WHOLE_FILE, {
      rule: 'bad-id',
      message: `the folder's name ${shown(id)} cannot be the address of a trial`,
      remedy: 'Name it with letters a to z, digits and hyphens, such as jar-or-packet.',
    });
  }
  for (const name of files.keys()) {
    if (DATA_FILES.includes(name) || OTHERS.includes(name)) continue;
    if (/^(photos|sheets)\//.test(name) || /(^|\/)\./.test(name) || /(^|\/)(Thumbs\.db|desktop\.ini)$/i.test(name))
      continue;
    const close = nearest(name, [...DATA_FILES, ...OTHERS]);
    problems.in(name).warning(WHOLE_FILE, {
      rule: 'unknown-file',
      message: 'nothing reads a file of this name',
      remedy:
        close === null
          ? 'Save tables as CSV under the names of the data format; keep other files outside the folder.'
          : `Should it be named ${shown(close)}?`,
    });
  }
}
