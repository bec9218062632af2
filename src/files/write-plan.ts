import { access, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { writeNewFile } from './write-new-file.ts';

/**
 * Writes the folder of a new trial, and its key elsewhere; never over anything.
 *
 * @param files text by name within the folder
 * @param key   null where the trial is not blind
 * @returns the path that is taken, in which case nothing was written; null where all is there
 */
export async function writePlan(
  folder: string,
  files: ReadonlyMap<string, string>,
  key: { readonly file: string; readonly text: string } | null,
): Promise<string | null> {
  for (const path of [folder, ...(key === null ? [] : [key.file])]) if (await exists(path)) return path;
  const encoder = new TextEncoder();
  // The key first: a plan without its key would be of no use to anyone.
  if (key !== null && !(await writeNewFile(key.file, encoder.encode(key.text)))) return key.file;
  await mkdir(dirname(folder), { recursive: true });
  await mkdir(folder);
  for (const [name, text] of files) await writeNewFile(join(folder, name), encoder.encode(text));
  return null;
}

const exists = (path: string) =>
  access(path).then(
    () => true,
    () => false,
  );
