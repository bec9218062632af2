import { cpSync, globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { HookParameters } from 'astro';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, onTestFinished, test } from 'vitest';
import { searchIndex } from '../../src/files/search-index.ts';
import { startBrowser } from '../support/browser.ts';
import { serve } from '../support/build-site.ts';

const site = inject('site');
let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

async function open(address: string, options = {}): Promise<{ page: Page; loaded: string[]; complaints: string[] }> {
  const context = await browser.newContext(options);
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const [loaded, complaints]: [string[], string[]] = [[], []];
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
  page.on('request', (request) => loaded.push(request.url()));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  await page.goto(address);
  return { page, loaded, complaints };
}

const links = (page: Page) =>
  page.locator('#search-results a').evaluateAll((all) => all.map((a) => a.getAttribute('href')));

test('nothing is loaded before a search; a search finds reports and breaks no rule of the policy', async () => {
  const { page, loaded, complaints } = await open(`${site.address}search/`);
  expect(loaded.filter((address) => address.includes('/pagefind/'))).toEqual([]);
  await page.getByRole('searchbox').fill('parsley');
  await page.keyboard.press('Enter');
  await page.locator('#search-results li').first().waitFor();
  expect(await links(page)).toContain(`${site.base}trials/parsley-soaked-a-day/`);
  expect(await page.getByRole('status').textContent()).toMatch(/^\d+ pages found; \d+ shown\.$/);
  expect(await page.locator('#search-results mark').first().textContent()).toMatch(/parsley/i);
  expect(page.url()).toBe(`${site.address}search/?q=parsley`);
  expect(complaints).toEqual([]);
  expect(loaded.filter((address) => !address.startsWith(site.address))).toEqual([]);
});

test('a search can be linked to; what is not found is said, and stays text', async () => {
  const words = '<zzqqxx>';
  const { page, complaints } = await open(`${site.address}search/?q=${encodeURIComponent(words)}`);
  await page.getByText('Nothing found').waitFor();
  expect(await page.getByRole('status').textContent()).toBe(`Nothing found for “${words}”.`);
  expect(await page.locator('#content zzqqxx').count()).toBe(0);
  expect(complaints).toEqual([]);
});

test('without a script the lists remain and no form is shown', async () => {
  const { page } = await open(`${site.address}search/`, { javaScriptEnabled: false });
  expect(await page.locator('#search').isVisible()).toBe(false);
  expect(await page.getByText('Search needs JavaScript').isVisible()).toBe(true);
  expect(await page.locator(`main a[href="${site.base}trials/"]`).count()).toBe(1);
});

/** An index of the same pages in parts of so many. */
async function writeInParts(folder: string, inAPart: number): Promise<void> {
  const index = searchIndex(inAPart);
  const { hooks } = index.integration;
  const outDir = pathToFileURL(`${folder}/`);
  await hooks['astro:config:done']?.({ config: { outDir } } as HookParameters<'astro:config:done'>);
  const files = globSync('**/index.html', { cwd: site.folder }).toSorted();
  const paths = files.map((file) => file.replace(/index\.html$/, ''));
  index.expect(paths);
  await Promise.all(files.map((file, at) => index.add(paths[at] ?? '', readFileSync(join(site.folder, file), 'utf8'))));
  await hooks['astro:build:done']?.({} as HookParameters<'astro:build:done'>);
}

test('an index in parts is searched as one', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-search-'));
  cpSync(site.folder, folder, { recursive: true, filter: (path) => !path.includes('/pagefind') });
  await writeInParts(folder, 10);
  expect(JSON.parse(readFileSync(join(folder, 'pagefind', 'parts.json'), 'utf8')).length).toBeGreaterThan(1);
  const { port, close } = await serve(folder, site.base);
  onTestFinished(async () => {
    await close();
    rmSync(folder, { recursive: true });
  });
  const found = async (address: string) => {
    const { page, complaints } = await open(`${address}search/?q=parsley`);
    await page.locator('#search-results li').first().waitFor();
    expect(complaints).toEqual([]);
    return (await links(page)).toSorted();
  };
  const whole = await found(site.address);
  expect(whole.length).toBeGreaterThan(2);
  expect(await found(`http://localhost:${port}${site.base}`)).toEqual(whole);

  // What cannot be loaded is said, and a later search tries again.
  const { page } = await open(site.address);
  await page.route('**/pagefind-entry.json*', (route) => route.abort());
  await page.goto(`http://localhost:${port}${site.base}search/?q=parsley`);
  await page.getByText('could not be loaded').waitFor();
  await page.unroute('**/pagefind-entry.json*');
  await page.getByRole('searchbox').press('Enter');
  await page.locator('#search-results li').first().waitFor();
});

test('below a base path it finds its index and leads to pages below that path', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-search-'));
  for (const part of ['search', '_astro', 'pagefind']) cpSync(join(site.folder, part), join(folder, part), { recursive: true }); // prettier-ignore
  const { port, close } = await serve(folder, '/garden/');
  onTestFinished(async () => {
    await close();
    rmSync(folder, { recursive: true });
  });
  // The page as it would be built there: its addresses with the path before them.
  const { page } = await open('about:blank');
  await page.route('**/garden/search/', async (route) => {
    const response = await route.fetch();
    const html = (await response.text()).replaceAll('"/', '"/garden/');
    await route.fulfill({ response, body: html });
  });
  await page.goto(`http://localhost:${port}/garden/search/`);
  await page.getByRole('searchbox').fill('parsley');
  await page.keyboard.press('Enter');
  await page.locator('#search-results li').first().waitFor();
  expect(await links(page)).toContain('/garden/trials/parsley-soaked-a-day/');
});
