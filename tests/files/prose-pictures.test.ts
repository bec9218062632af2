import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, onTestFinished, test } from 'vitest';
import { prosePictures } from '../../src/files/prose-pictures.ts';
import { publishedPhoto } from '../../src/files/published-photo.ts';
import { proseHtml } from '../support/prose-html.ts';

async function trialWith(pictures: Readonly<Record<string, readonly [width: number, height: number]>>) {
  const trial = join(mkdtempSync(join(tmpdir(), 'fairsown-prose-')), 'peas');
  onTestFinished(() => rmSync(join(trial, '..'), { recursive: true, force: true }));
  mkdirSync(join(trial, 'photos'), { recursive: true });
  for (const [name, [width, height]] of Object.entries(pictures)) {
    await sharp({ create: { width, height, channels: 3, background: '#765' } }).toFile(join(trial, 'photos', name));
  }
  const render = (text: string) => proseHtml(text, [prosePictures, { base: '/garden/' }], join(trial, 'report.md'));
  return { trial, render };
}

test('a picture in a text is the one that the site publishes, with its size', async () => {
  const { trial, render } = await trialWith({ '8 tray.png': [2000, 1000], '9-b.jpg': [300, 200] });
  const html = await render('![A tray](<photos/8 tray.png>)\n\n![Small][b]\n\n[b]: photos/9-b.jpg "of day 9"');
  expect(html).toContain(
    '<img src="/garden/trials/peas/photos/8%20tray.png.1280.webp" alt="A tray" width="1280" height="640" loading="lazy">',
  );
  expect(html).toContain(
    '<img src="/garden/trials/peas/photos/9-b.jpg.300.webp" alt="Small" width="300" height="200" loading="lazy">',
  );
  for (const [name, file] of [
    ['8 tray.png', '8 tray.png.1280.webp'],
    ['9-b.jpg', '9-b.jpg.300.webp'],
  ] as const) {
    expect((await publishedPhoto(join(trial, 'photos', name))).map((made) => made.name)).toContain(file);
  }
});

test('a text without pictures stays as it is', async () => {
  const { render } = await trialWith({});
  expect(await render('Words, [a link](photos/9-b.jpg).')).toBe('<p>Words, <a href="photos/9-b.jpg">a link</a>.</p>');
});
