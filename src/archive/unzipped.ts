import { unzipSync } from 'fflate';

/** What a zip may hold; far above any trial, far below what would fill a machine. */
const MOST_FILES = 500;
const MOST_BYTES_A_FILE = 20_000_000;
const MOST_BYTES = 100_000_000;

/**
 * The files of a zip by name, without the one folder that holds them all, if there is one. Nothing is
 * written anywhere. Names that lead out of a folder, and zips that unpack to much more than a trial, are refused
 * before anything is unpacked; a file that is longer than the zip says is cut off there, so its digest fails.
 *
 * @returns a sentence that says why, where it is refused
 */
export function unzipped(zip: Uint8Array): ReadonlyMap<string, Uint8Array> | string {
  let [refusal, total]: [string | null, number] = [null, 0];
  const names = new Set<string>();
  let files: Readonly<Record<string, Uint8Array>>;
  try {
    files = unzipSync(zip, {
      filter: ({ name, originalSize }) => {
        total += originalSize;
        refusal ??= unsafeName(name) ?? (names.has(name) ? 'It holds two files of one name.' : null);
        names.add(name);
        if (names.size > MOST_FILES || originalSize > MOST_BYTES_A_FILE || total > MOST_BYTES) {
          refusal ??= 'It unpacks to more than a trial can hold (500 files, 20 MB a file, 100 MB together).';
        }
        return refusal === null && !name.endsWith('/') && !/(^|\/)(__MACOSX\/|\.)/.test(name);
      },
    });
  } catch {
    return refusal ?? 'It cannot be read as a zip; it may be damaged.';
  }
  return refusal ?? new Map(Object.entries(withoutFolder(files)));
}

function unsafeName(name: string): string | null {
  const isUnsafe = /(^|[\\/])\.\.([\\/]|$)|^[\\/]|^[A-Za-z]:|[\\\p{Cc}]/u.test(name);
  return isUnsafe ? 'It holds a file whose name leads out of the folder; it is not unpacked.' : null;
}

function withoutFolder(files: Readonly<Record<string, Uint8Array>>): Readonly<Record<string, Uint8Array>> {
  const names = Object.keys(files);
  const folder = names[0]?.split('/')[0] ?? '';
  if (!names.every((name) => name.startsWith(`${folder}/`))) return files;
  return Object.fromEntries(Object.entries(files).map(([name, bytes]) => [name.slice(folder.length + 1), bytes]));
}
