// What the threads of read-trials.ts run.
import { workerData } from 'piscina';
import type { ReadSite } from '../trial/read-site.ts';
import { readTrialFolder, type TrialFolder } from './read-trial-folder.ts';

const site: ReadSite = workerData;

/** Some trials, one after the other. */
export default async function read(folders: readonly string[]): Promise<readonly TrialFolder[]> {
  const trials: TrialFolder[] = [];
  for (const folder of folders) trials.push(await readTrialFolder(folder, site));
  return trials;
}
