import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Writes a file where there is none yet, with the folders above it; never over another.
 *
 * @returns false where the file is there already: it stays as it is
 * @throws {Error} where the place cannot be written to, as Node says it
 */
export async function writeNewFile(path: string, bytes: Uint8Array): Promise<boolean> {
  await mkdir(dirname(path), { recursive: true });
  try {
    await writeFile(path, bytes, { flag: 'wx' }); // fails where the path exists, a link included
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}
