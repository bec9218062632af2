import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import type { FolderProblems } from '../trial/folder-problems.ts';
import { HEIC, PICTURE } from '../trial/read-photos.ts';

/** Far above any camera. */
const MOST_PIXELS = 200_000_000;

/** Reports files named as pictures that are none: another kind under a borrowed name would stop the build half-way. */
export async function checkPictures(folder: string, names: Iterable<string>, problems: FolderProblems): Promise<void> {
  const pictures = [...names].filter((name) => name.startsWith('photos/') && PICTURE.test(name));
  if (pictures.length === 0) return;
  const { default: sharp } = await import('sharp'); // slow to load, and few trials have pictures
  for (const name of pictures) {
    const path = join(folder, name);
    if (await isHeic(path)) {
      problems.in(name).error(WHOLE_FILE, HEIC);
      continue;
    }
    const size = await sharp(path)
      .metadata()
      .catch(() => null);
    if (size === null) {
      problems.in(name).error(WHOLE_FILE, {
        rule: 'not-a-picture',
        message: 'this is named as a picture, but none can be read in it',
        remedy: 'Save the picture again as JPEG, PNG or WebP, or take the file out.',
      });
    } else if (size.width * size.height > MOST_PIXELS) {
      problems.in(name).error(WHOLE_FILE, {
        rule: 'picture-too-large',
        message: `the picture has ${size.width} by ${size.height} pixels, more than can be published`,
        remedy: 'Save it smaller: a page shows at most 1280 pixels across.',
      });
    }
  }
}

/** By its first bytes (ISO 14496-12, file type box): phones and mail programs rename HEIC to .jpg. */
async function isHeic(path: string): Promise<boolean> {
  const file = await open(path);
  try {
    const { buffer } = await file.read(Buffer.alloc(12), 0, 12, 0);
    return /^ftyp(?:hei[cxms]|hev[cxms]|mif1|msf1)$/.test(buffer.toString('latin1', 4, 12));
  } finally {
    await file.close();
  }
}
