import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
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
  const tagged = await sharp({ create: { width: 2000, height: 1000, channels: 3, background: '#684' } })
    .withMetadata({ orientation: 6 })
    .withExifMerge({
      IFD0: { Artist: 'Mara Example', Make: 'Camera of Mara', Model: 'M-1', DateTime: '2026:04:09 10:00:00' },
      IFD2: { DateTimeOriginal: '2026:04:09 10:00:00', BodySerialNumber: 'SERIAL-77' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
    })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><place>Wennoby</place></x:xmpmeta>')
    .jpeg()
    .toFile(path);
  expect(tagged.width).toBe(2000);
});
afterAll(() => rmSync(folder, { recursive: true }));

test('a published picture says nothing of place, time, camera or person', async () => {
  const before = readFileSync(path).toString('latin1');
  for (const said of ['Exif', 'Mara', 'Camera of Mara', 'SERIAL-77', '2026:04:09', 'Wennoby'])
    expect(before).toContain(said);
  const files = await publishedPhoto(path);
  expect(files).toHaveLength(4);
  for (const { name, bytes } of [...files, ...(await publishedPhoto(path, 1))]) {
    const { exif, xmp, iptc, icc, comments } = await sharp(bytes).metadata();
    expect({ exif, xmp, iptc, icc, comments }, name).toEqual({});
    const said = Buffer.from(bytes).toString('latin1');
    expect(said, name).not.toMatch(/Exif|Mara|SERIAL|2026:|Wennoby|xmpmeta|ICC_PROFILE|GPS/);
  }
});

test('it stands upright, in two formats and two widths, no wider than a page needs', async () => {
  const files = await publishedPhoto(path);
  expect(files.map(({ name, width, height }) => `${name} ${width} × ${height}`)).toEqual([
    '5-s01.jpg.640.avif 640 × 1280',
    '5-s01.jpg.1000.avif 1000 × 2000',
    '5-s01.jpg.640.webp 640 × 1280',
    '5-s01.jpg.1000.webp 1000 × 2000',
  ]);
  for (const { bytes, width, height, format } of files) {
    const found = await sharp(bytes).metadata();
    expect([found.width, found.height, found.format]).toEqual([width, height, format === 'avif' ? 'heif' : format]);
  }
});

test('a picture that is narrower than a page is not blown up', async () => {
  const small = join(folder, 'small.png');
  await sharp({ create: { width: 300, height: 200, channels: 3, background: '#684' } })
    .png()
    .toFile(small);
  expect((await publishedPhoto(small)).map(({ name }) => name)).toEqual(['small.png.300.avif', 'small.png.300.webp']);
});

test('cut to a shape it has that shape, under a name of its own', async () => {
  const files = await publishedPhoto(path, 4 / 3);
  expect(files.map(({ name, width, height }) => `${name} ${width} × ${height}`)).toEqual([
    '5-s01.jpg.alike.640.avif 640 × 480',
    '5-s01.jpg.alike.1000.avif 1000 × 750',
    '5-s01.jpg.alike.640.webp 640 × 480',
    '5-s01.jpg.alike.1000.webp 1000 × 750',
  ]);
});

test('the same picture gives the same bytes', async () => {
  expect(await publishedPhoto(path)).toEqual(await publishedPhoto(path));
});

test('a file that is no picture is refused', async () => {
  await expect(publishedPhoto(join(import.meta.dirname, 'published-photo.test.ts'))).rejects.toThrow();
});
