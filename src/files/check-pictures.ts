import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import type { FolderProblems } from '../trial/folder-problems.ts';
import { HEIC, PICTURE } from '../trial/read-photos.ts';
import type { Refusal } from '../trial/refusal.ts';

/** Far above any camera. */
const MOST_PIXELS = 200_000_000;
/** The longest side that WebP can have. */
const LONGEST_SIDE = 16_383;
/** What they are by their content, whatever they are named; with what their file ends. */
const ENDS: Readonly<Record<string, string>> = { jpeg: '\u00FF\u00D9', png: 'IEND', webp: '' };
/** Bytes at the end of a file in which its last mark stands. */
const TAIL = 65_536;

/**
 * Reports files named as pictures that are none, too large or cut short: another kind under a borrowed name, or half a
 * picture, would stop the build half-way.
 */
export async function checkPictures(folder: string, names: Iterable<string>, problems: FolderProblems): Promise<void> {
  for (const name of names) {
    if (!name.startsWith('photos/') || !PICTURE.test(name)) continue;
    const refusal = await refusalOf(join(folder, name));
    if (refusal) problems.in(name).error(WHOLE_FILE, refusal);
  }
}

async function refusalOf(path: string): Promise<Refusal | null> {
  const { head, tail } = await endsOf(path);
  // By its first bytes (ISO 14496-12, file type box): phones and mail programs rename HEIC to .jpg.
  if (/^ftyp(?:hei[cxms]|hev[cxms]|mif1|msf1)$/.test(head.slice(4, 12))) return HEIC;
  const { default: sharp } = await import('sharp'); // slow to load, and few trials have pictures
  const options = { limitInputPixels: false } as const; // only the size is read
  const found = await sharp(path, options).metadata().catch(() => null); // prettier-ignore
  const end = found ? ENDS[found.format] : undefined;
  if (!found || end === undefined) {
    return {
      rule: 'not-a-picture',
      message: 'this is named as a picture, but none can be read in it',
      remedy: 'Save the picture again as JPEG, PNG or WebP, or take the file out.',
    };
  }
  const { width, height } = found;
  if (width * height > MOST_PIXELS || Math.max(width, height) > LONGEST_SIDE) {
    return {
      rule: 'picture-too-large',
      message: `the picture has ${width} by ${height} pixels, more than can be published`,
      remedy: 'Save it smaller: a page shows at most 1280 pixels across.',
    };
  }
  // Reading the whole picture takes long, so only where its end is not where it should be.
  const isWhole = end !== '' && tail.includes(end) ? true : await sharp(path).resize(8).toBuffer().then(() => true, () => false); // prettier-ignore
  if (isWhole) return null;
  return {
    rule: 'picture-cut-off',
    message: 'the picture breaks off before its end',
    remedy: 'Copy it from the camera or phone once more, or take the file out.',
  };
}

async function endsOf(path: string): Promise<{ readonly head: string; readonly tail: string }> {
  const file = await open(path);
  try {
    const { size } = await file.stat();
    const read = async (length: number, at: number) => {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, at);
      return buffer.toString('latin1', 0, bytesRead);
    };
    return { head: await read(12, 0), tail: await read(TAIL, Math.max(0, size - TAIL)) };
  } finally {
    await file.close();
  }
}
