import { link, lstat, rename } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { makeFolder } from './make-folder.ts';
import { withUnfinished } from './with-unfinished.ts';
import { writeThrough } from './write-through.ts';
import { writing } from './writing.ts';

/**
 * Writes a file where there is none yet, with the folders above it: whole or not at all, and never over another.
 *
 * @returns false where the file is there already: it stays as it is
 * @throws {Unwritten} where the place cannot be written to
 */
export function writeNewFile(path: string, bytes: Uint8Array): Promise<boolean> {
  return writing(path, async () => {
    if (await isTaken(path)) return false;
    await makeFolder(dirname(path));
    return withUnfinished(dirname(path), async (folder) => {
      const whole = join(folder, 'file');
      await writeThrough(whole, bytes);
      return moveToNew(whole, path);
    });
  });
}

/** A second name for the same file is refused where the first is taken, a link included; moving would write over it. */
async function moveToNew(whole: string, path: string): Promise<boolean> {
  try {
    await link(whole, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
  }
  if (await isTaken(path)) return false;
  await rename(whole, path); // a memory stick knows no second names
  return true;
}

const isTaken = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return false;
      throw error;
    },
  );
