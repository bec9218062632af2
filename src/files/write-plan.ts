import { lstat, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { makeFolder } from './make-folder.ts';
import { withUnfinished } from './with-unfinished.ts';
import { writeNewFile } from './write-new-file.ts';
import { writeThrough } from './write-through.ts';
import { writing } from './writing.ts';

/**
 * Writes the folder of a new trial whole or not at all, and what belongs to it elsewhere, such as its key; never over
 * anything.
 *
 * @param content folder on the same disk, which is there
 * @param files   bytes by name within the trial's folder
 * @param apart   bytes by path outside it
 * @returns the path that is taken, in which case nothing was written; null where all is there
 * @throws {Unwritten} where a place cannot be written to; nothing is there then
 */
export async function writePlan(
  content: string,
  folder: string,
  files: ReadonlyMap<string, Uint8Array>,
  apart: ReadonlyMap<string, Uint8Array>,
): Promise<string | null> {
  for (const path of [folder, ...apart.keys()]) if (await exists(path)) return path;
  const outside: string[] = [];
  const taken = writing(folder, () => withUnfinished(content, writeBoth));
  return taken.finally(async () => {
    for (const path of outside) await rm(path, { force: true }).catch(() => {});
  });

  async function writeBoth(unfinished: string): Promise<string | null> {
    const whole = join(unfinished, basename(folder));
    for (const [name, bytes] of files) {
      await makeFolder(dirname(join(whole, name)));
      await writeThrough(join(whole, name), bytes);
    }
    await makeFolder(dirname(folder));
    // Before the folder: a plan without its key would be of no use to anyone.
    for (const [path, bytes] of apart) {
      if (!(await writeNewFile(path, bytes))) return path;
      outside.push(path);
    }
    await rename(whole, folder);
    outside.length = 0; // they belong to something now
    return null;
  }
}

const exists = (path: string) =>
  lstat(path).then(
    () => true,
    () => false,
  );
