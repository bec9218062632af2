import { mkdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Makes a folder and those above it where they are missing. Node's own way of doing so tells of a disk that can only be
 * read as of a folder that is not there.
 *
 * @throws {Error} of the system, with the true reason
 */
export async function makeFolder(path: string): Promise<void> {
  const make = () => mkdir(path).catch((error: NodeJS.ErrnoException) => error.code ?? '');
  let refused = await make();
  if (refused === 'ENOENT' && dirname(path) !== path) {
    await makeFolder(dirname(path));
    refused = await make();
  }
  if (refused === undefined || (refused === 'EEXIST' && (await isFolder(path)))) return;
  const code = refused === 'EEXIST' ? 'ENOTDIR' : refused;
  throw Object.assign(new Error(`${code}: ${path}`), { code, syscall: 'mkdir', path });
}

const isFolder = (path: string): Promise<boolean> => stat(path).then((found) => found.isDirectory(), () => false); // prettier-ignore
