import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
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
