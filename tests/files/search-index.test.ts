import { globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { HookParameters } from 'astro';
import { expect, onTestFinished, test } from 'vitest';
import { searchIndex } from '../../src/files/search-index.ts';

const page = (words: string) => `<html lang="en"><body><main><h1>${words}</h1></main></body></html>`;
const PAGES: Readonly<Record<string, string | null>> = {
  'trials/beans/': page('Beans under glass'),
  'about/': page('About the circle'),
  'trials/old-beans/': null,
  'trials/carrots/': page('Carrots in sand'),
};

/** The files of an index for which the pages came in the given order. */
async function indexOf(order: readonly string[], inAPart?: number): Promise<readonly (readonly [string, string])[]> {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-search-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const index = searchIndex(inAPart);
  const outDir = pathToFileURL(`${folder}/`);
  await index.integration.hooks['astro:config:done']?.({ config: { outDir } } as HookParameters<'astro:config:done'>);
  index.expect(Object.keys(PAGES));
  await Promise.all(order.map((path) => index.add(path, PAGES[path] ?? null)));
  await index.integration.hooks['astro:build:done']?.({} as HookParameters<'astro:build:done'>);
  const files = globSync('pagefind/**/*.*', { cwd: folder }).toSorted();
  return files.map((file) => [file, readFileSync(join(folder, file), 'latin1')] as const);
}

test('whichever page is made first, the index is the same, and holds all pages but old addresses', async () => {
  const planned = await indexOf(Object.keys(PAGES));
  expect(await indexOf(Object.keys(PAGES).toReversed())).toEqual(planned);
  expect(planned.filter(([file]) => file.endsWith('.pf_fragment'))).toHaveLength(3);
});

test('very many pages are several parts, the same whichever page is made first; none is empty', async () => {
  const planned = await indexOf(Object.keys(PAGES), 1);
  expect(await indexOf(Object.keys(PAGES).toReversed(), 1)).toEqual(planned);
  const fragments = planned.map(([file]) => file).filter((file) => file.endsWith('.pf_fragment'));
  expect(fragments.map((file) => file.replace(/[^/]+$/, ''))).toEqual([
    'pagefind/2/fragment/',
    'pagefind/3/fragment/',
    'pagefind/fragment/',
  ]);
  expect(planned).toContainEqual(['pagefind/parts.json', '["2/","3/"]']);
  const scripts = planned.map(([file]) => file).filter((file) => /\.js$|wasm/.test(file));
  expect(scripts.filter((file) => /\d\//.test(file))).toEqual([]); // those of the first part serve all
});

test('lists, and trials worked out again, are not waited for', async () => {
  const index = searchIndex();
  index.expect(['trials/', 'trials/beans/recheck/', '404/', '']);
  for (const path of ['', 'trials/beans/recheck/']) await expect(index.add(path, page('Not found'))).resolves.toBe(undefined); // prettier-ignore
});
