import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { publishedPhoto } from '../../src/files/published-photo.ts';

let folder: string;
let path: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-'));
  path = join(folder, '5-s01.jpg');
  await sharp({ create: { width: 2000, height: 1000, channels: 3, background: '#684' } })
    .withMetadata({ orientation: 6 })
    .withExifMerge({ IFD0: { Artist: 'Mara' }, IFD3: { GPSLatitude: '51/1 30/1 0/1' } })
    .jpeg()
    .toFile(path);
});
afterAll(() => rmSync(folder, { recursive: true }));

test('a published picture says nothing of place, time or person', async () => {
  expect((await sharp(path).metadata()).exif).toBeDefined();
  const { exif, xmp, iptc } = await sharp((await publishedPhoto(path)).bytes).metadata();
  expect({ exif, xmp, iptc }).toEqual({ exif: undefined, xmp: undefined, iptc: undefined });
});

test('it stands upright and is not wider than a page needs', async () => {
  const { name, width, height } = await publishedPhoto(path);
  expect({ name, width, height }).toEqual({ name: '5-s01.jpg.webp', width: 1000, height: 2000 });
});

test('the same picture gives the same bytes', async () => {
  expect((await publishedPhoto(path)).bytes).toEqual((await publishedPhoto(path)).bytes);
});

test('a file that is no picture is refused', async () => {
  await expect(publishedPhoto(join(import.meta.dirname, 'published-photo.test.ts'))).rejects.toThrow();
});
