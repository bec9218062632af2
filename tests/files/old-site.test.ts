import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { HookParameters } from 'astro';
import { beforeEach, expect, onTestFinished, test } from 'vitest';
import { oldSite } from '../../src/files/old-site.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-old-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
});

function write(file: string, text: string, daysAgo = 0): void {
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  const time = Date.now() / 1000 - daysAgo * 86_400;
  if (daysAgo > 0) utimesSync(path, time, time);
}

/** A build that writes what `pages` says, between its start and its end. */
async function build(pages: () => void): Promise<void> {
  const { hooks } = oldSite();
  const config = { outDir: pathToFileURL(`${folder}/`) };
  await hooks['astro:config:done']?.({ config } as HookParameters<'astro:config:done'>);
  await hooks['astro:build:start']?.({} as HookParameters<'astro:build:start'>);
  pages();
  await hooks['astro:build:done']?.({} as HookParameters<'astro:build:done'>);
}

test('after a build nothing is left of the one before but what git keeps', async () => {
  write('index.html', 'old', 1);
  write('trials/gone/data/counts.csv', 'old', 1);
  write('trials/peas/index.html', 'old', 1);
  write('.git/HEAD', 'ref', 1);
  await build(() => {
    write('index.html', 'new');
    write('trials/peas/index.html', 'new');
    write('trials/beans/index.html', 'new');
  });
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).toSorted();
  expect(files).toEqual(['.git', '.git/HEAD', 'index.html', 'trials', 'trials/beans', 'trials/beans/index.html', 'trials/peas', 'trials/peas/index.html']); // prettier-ignore
  expect(readFileSync(join(folder, 'index.html'), 'utf8')).toBe('new');
});

test('until its end the old site stays', async () => {
  write('trials/gone/index.html', 'old', 1);
  await build(() => expect(existsSync(join(folder, 'trials/gone/index.html'))).toBe(true));
  expect(readdirSync(folder)).toEqual([]);
});
