import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';

const PREFIX = '.unfinished-';

/**
 * Lends a new folder in which something is made, to be moved to its place once it is whole: so a command that is killed
 * leaves nothing half-made where it would be read. The folder goes afterwards, and so do those that commands
 * left which were killed. Nothing reads a name that begins with a dot.
 *
 * @param beside folder on the same disk as the place, which is there
 */
export async function withUnfinished<T>(beside: string, make: (folder: string) => Promise<T>): Promise<T> {
  for (const name of await readdir(beside)) if (isLeft(name)) await remove(join(beside, name));
  const folder = await newFolder(beside);
  try {
    return await make(folder);
  } finally {
    await remove(folder);
  }
}

/** Named by the process, so that it is known whether somebody still works in it. */
async function newFolder(beside: string): Promise<string> {
  for (let number = 1; ; number++) {
    const folder = join(beside, `${PREFIX}${process.pid}-${number}`);
    try {
      await mkdir(folder);
      return folder;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  }
}

function isLeft(name: string): boolean {
  const [, pid] = /^\.unfinished-(\d+)-\d+$/.exec(name) ?? [];
  if (pid === undefined) return false;
  try {
    process.kill(Number(pid), 0); // only asks whether it is there
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

/** What cannot be removed does no harm. */
const remove = (path: string) => rm(path, { recursive: true, force: true }).catch(() => {});
