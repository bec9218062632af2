import { closeSync, constants, fstatSync, ftruncateSync, mkdirSync, openSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where a build notes, for all its threads, the folder into which it writes the site. */
export const SITE_FOLDER = 'FAIRSOWN_SITE_FOLDER';

/**
 * Writes files into a folder of the site that is being built, beside the one that Astro asked for.
 *
 * @param folder below that of the site
 * @throws {Error} of the file system
 */
export function writeBeside(
  folder: string,
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): void {
  const path = join(process.env[SITE_FOLDER] ?? '', folder);
  try {
    mkdirSync(path, { recursive: true });
    for (const { name, bytes } of files) writeOver(join(path, name), bytes); // at once they would wait for each other
  } catch (error) {
    // Astro prints the stack of what stops a page, which tells a grower nothing.
    if (error instanceof Error) error.stack = error.message;
    throw error;
  }
}

/** Writes over what an earlier build left; to empty the file first takes the file system several times as long. */
function writeOver(path: string, bytes: Uint8Array): void {
  const isEmpty = bytes.length === 0; // to write nothing would leave the time at which it was written
  const file = openSync(path, constants.O_WRONLY | constants.O_CREAT | (isEmpty ? constants.O_TRUNC : 0));
  try {
    writeFileSync(file, bytes);
    if (fstatSync(file).size !== bytes.length) ftruncateSync(file, bytes.length);
  } finally {
    closeSync(file);
  }
}
