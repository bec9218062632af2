import { readFile, stat } from 'node:fs/promises';
import { unzipped } from '../archive/unzipped.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import { readFolder } from './read-folder.ts';

/** The largest zip that is opened. */
const MOST_BYTES = 100_000_000;

/** Names that a published file can have; others are not read. */
const PUBLISHED = /\.(csv|yaml|json|R|cff|bib)$|^SHA256SUMS$|^repeat-[^/]+\.zip$/;

/**
 * The files of a published data folder, or of its zip, by name.
 *
 * @returns a sentence that says why, where there is none or it is not safe to read
 */
export async function readPublished(path: string): Promise<ReadonlyMap<string, Uint8Array> | string> {
  const found = await stat(path).catch(() => null);
  if (!found) return 'There is no such file or folder.';
  if (found.isDirectory()) {
    const problems = new FolderProblems(path);
    const files = readFolder(path, [], (name) => PUBLISHED.test(name), problems);
    return problems.hasErrors ? 'It holds a link that leads out of the folder; that is not followed.' : files;
  }
  if (!found.isFile()) return 'It is neither a folder nor a zip.';
  if (found.size > MOST_BYTES) return 'The zip is larger than that of any trial (100 MB).';
  return unzipped(await readFile(path));
}
