import { unzipEntry } from './unzip-entry.ts';
import { zipEntries, type ZipEntry } from './zip-entries.ts';

/** What a zip may hold; far above any trial, far below what would fill a machine. */
const MOST_FILES = 500;
const MOST_BYTES_A_FILE = 20_000_000;
const MOST_BYTES = 100_000_000;
const DAMAGED = 'It cannot be read as a zip; it may be damaged.';

/**
 * The files of a zip by name, without the one folder that holds them all, if there is one. Nothing is
 * written anywhere. Names that lead out of a folder, and zips that unpack to much more than a trial, are refused
 * before anything is unpacked; a file that is longer than the zip says is cut off there, so its digest fails.
 *
 * @returns a sentence that says why, where it is refused
 */
export function unzipped(zip: Uint8Array): ReadonlyMap<string, Uint8Array> | string {
  const entries = zipEntries(zip);
  if (entries === null) return DAMAGED;
  const refusal = refusalOf(entries);
  if (refusal !== null) return refusal;
  const wanted = entries.filter(({ name }) => !name.endsWith('/') && !/(^|\/)(__MACOSX\/|\.)/.test(name));
  try {
    return withoutFolder(wanted.map((entry) => [entry.name, unzipEntry(zip, entry)]));
  } catch {
    return DAMAGED;
  }
}

function refusalOf(entries: readonly ZipEntry[]): string | null {
  const names = new Set<string>();
  let total = 0;
  for (const { name, size } of entries) {
    if (/(^|[\\/])\.\.([\\/]|$)|^[\\/]|^[A-Za-z]:|[\\\p{Cc}]/u.test(name)) {
      return 'It holds a file whose name leads out of the folder; it is not unpacked.';
    }
    if (names.has(name)) return 'It holds two files of one name.';
    names.add(name);
    total += size;
    if (names.size > MOST_FILES || size > MOST_BYTES_A_FILE || total > MOST_BYTES) {
      return 'It unpacks to more than a trial can hold (500 files, 20 MB a file, 100 MB together).';
    }
  }
  return null;
}

function withoutFolder(files: readonly (readonly [name: string, bytes: Uint8Array])[]): Map<string, Uint8Array> {
  const folder = files[0]?.[0].split('/')[0] ?? '';
  if (!files.every(([name]) => name.startsWith(`${folder}/`))) return new Map(files);
  return new Map(files.map(([name, bytes]) => [name.slice(folder.length + 1), bytes]));
}
