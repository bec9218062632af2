import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { publishedPhoto } from '../../src/files/published-photo.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';
import { temporaryContent } from './temporary-content.ts';

const jpeg = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#684' } })
  .jpeg()
  .toBuffer();
const HEIC = Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1');

async function problemsWith(photos: Readonly<Record<string, Uint8Array | string>>) {
  const trial = join(await temporaryContent(), 'trials', 'leek');
  await mkdir(join(trial, 'photos'));
  for (const [name, bytes] of Object.entries(photos)) await writeFile(join(trial, 'photos', name), bytes);
  const { problems } = await readTrialFolder(trial);
  return problems.map(({ file, line, level, message, remedy }) => `${file.split('photos/')[1]}:${line ?? ''} ${level}: ${message}. ${remedy}`); // prettier-ignore
}

test('a picture with its text is no problem', async () => {
  expect(await problemsWith({ '5-s01.jpg': jpeg, 'captions.yaml': '5-s01.jpg:\n  alt: A tray.\n' })).toEqual([]);
});

test('HEIC is refused with advice, by its name and under a borrowed one', async () => {
  const captions = '5-s02.jpg:\n  alt: A tray.\n';
  expect(await problemsWith({ '5-s01.HEIC': HEIC, '5-s02.jpg': HEIC, 'captions.yaml': captions }))
    .toMatchInlineSnapshot(`
    [
      "5-s02.jpg: error: this is a HEIC picture, which few browsers show; it cannot be published. Save it as JPEG. Most phones take JPEG in place of HEIC once their camera is set to the more compatible format.",
      "5-s01.HEIC: error: this is a HEIC picture, which few browsers show; it cannot be published. Save it as JPEG. Most phones take JPEG in place of HEIC once their camera is set to the more compatible format.",
    ]
  `);
});

test('what is named as a picture and is none is refused before the site is built', async () => {
  const captions = 'a.png:\n  alt: A tray.\n';
  expect(await problemsWith({ 'a.png': 'text', 'captions.yaml': captions })).toMatchInlineSnapshot(`
    [
      "a.png: error: this is named as a picture, but none can be read in it. Save the picture again as JPEG, PNG or WebP, or take the file out.",
    ]
  `);
});

test('a name that cannot be an address is refused; blanks, brackets and letters of any kind can', async () => {
  const captioned = (name: string) => ({
    [name]: jpeg,
    'captions.yaml': JSON.stringify({ [name]: { alt: 'A tray.' } }),
  });
  for (const name of [
    '5-%2e.jpg',
    '5-#1.jpg',
    '5-<b>.jpg',
    '5-"x".jpg',
    '5-a?.jpg',
    '5-a:b.jpg',
    '5-\u202Egpj.jpg',
    '5-\u001B[2J.jpg',
    '5-\\x.jpg',
  ]) {
    expect((await problemsWith(captioned(name))).join('\n'), name).toContain(
      ': error: the name of this picture holds a sign that cannot stand in every address or on every computer. Rename it',
    );
  }
  expect(await problemsWith(captioned("5-Tomate grün (2) & 'x'; ~1+2=3 \u{1F331}.jpg"))).toEqual([]);
});

test('drawings, animations and other kinds under a borrowed name are none, even where a picture can be made of them', async () => {
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30"><image href="/etc/passwd"/></svg>';
  const gif = Buffer.from('R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7', 'base64');
  const tiff = await sharp(jpeg).tiff().toBuffer();
  for (const bytes of [svg, gif, tiff, '<!DOCTYPE html><script>alert(1)</script>', '%PDF-1.4\n']) {
    const captions = 'a.jpg:\n  alt: A tray.\n';
    expect(await problemsWith({ 'a.jpg': bytes, 'captions.yaml': captions })).toEqual([
      'a.jpg: error: this is named as a picture, but none can be read in it. Save the picture again as JPEG, PNG or WebP, or take the file out.',
    ]);
  }
});

test.each([
  [30_000, 30_000],
  [1, 20_000],
])('a picture that says it has %d by %d pixels is refused before it is unpacked', async (width, height) => {
  const png = await sharp(jpeg).png().toBuffer();
  png.writeUInt32BE(width, 16); // in its head (PNG, section 11.2.1)
  png.writeUInt32BE(height, 20);
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29);
  const [found] = await problemsWith({ 'a.png': png, 'captions.yaml': 'a.png:\n  alt: A tray.\n' });
  expect(found).toBe(
    `a.png: error: the picture has ${width} by ${height} pixels, more than can be published. Save it smaller: a page shows at most 1280 pixels across.`,
  );
});

test('half a picture is refused; one with a fault inside is published as far as it can be seen', async () => {
  const grain = Uint8Array.from({ length: 90 * 60 * 3 }, (_, index) => (index * 7919) % 251);
  const picture = sharp(grain, { raw: { width: 90, height: 60, channels: 3 } });
  for (const format of ['jpeg', 'png'] as const) {
    const whole = await picture.clone()[format]().toBuffer();
    const name = format === 'jpeg' ? 'a.jpg' : 'a.png';
    const captions = `${name}:\n  alt: A tray.\n`;
    expect(await problemsWith({ [name]: whole, 'captions.yaml': captions })).toEqual([]);
    expect(await problemsWith({ [name]: whole.subarray(0, whole.length / 2), 'captions.yaml': captions })).toEqual([
      `${name}: error: the picture breaks off before its end. Copy it from the camera or phone once more, or take the file out.`,
    ]);
  }
  const faulty = await picture.clone().jpeg().toBuffer();
  faulty.fill(0x55, faulty.length >> 1, (faulty.length >> 1) + 40);
  const path = join(await temporaryContent({ 'faulty.jpg': faulty }), 'faulty.jpg');
  expect((await publishedPhoto(path)).map(({ width, height }) => [width, height])).toEqual([[90, 60], [90, 60]]); // prettier-ignore
});

test('a picture without a text for those who cannot see it is a warning, with its line where it has one', async () => {
  const captions = '# pictures\n5-s01.jpg:\n  caption: Day five\n';
  expect(await problemsWith({ '5-s01.jpg': jpeg, '5-s02.jpg': jpeg, 'captions.yaml': captions })).toMatchInlineSnapshot(`
    [
      "captions.yaml:1 warning: the picture "5-s02.jpg" has no text for readers who cannot see it. Say in a sentence what it shows, in photos/captions.yaml: under "5-s02.jpg:", the line "alt: …".",
      "captions.yaml:2 warning: the picture "5-s01.jpg" has no text for readers who cannot see it. Say in a sentence what it shows, in photos/captions.yaml: under "5-s01.jpg:", the line "alt: …".",
    ]
  `); // prettier-ignore
  expect(await problemsWith({ '5-s01.jpg': jpeg })).toMatchInlineSnapshot(`
    [
      "5-s01.jpg: warning: the picture "5-s01.jpg" has no text for readers who cannot see it. Say in a sentence what it shows, in photos/captions.yaml: under "5-s01.jpg:", the line "alt: …".",
    ]
  `);
});
