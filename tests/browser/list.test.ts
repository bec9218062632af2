import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { openPage } from '../support/open-page.ts';

const site = inject('site');
const titles = (page: Page) => page.locator('#entries > li:visible :is(h2, .brief > a)').allTextContents();

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const open = async (path: string, javaScriptEnabled = true) =>
  openPage(await browser.newContext({ javaScriptEnabled }), site.address + path, site.address);

test('without a script every choice is a page, one at a time', async () => {
  const { page } = await open('trials/', false);
  expect(await page.locator('#choices').isVisible()).toBe(false);
  const all = await titles(page);
  await page.getByRole('link', { name: 'leek', exact: true }).click();
  expect(new URL(page.url()).pathname).toBe(`${site.base}trials/by/crop/leek/`);
  const leeks = await page.locator('.entries h2').allTextContents();
  expect(leeks.length).toBeGreaterThan(0);
  expect(leeks.length).toBeLessThan(all.length);
  expect(all).toEqual(expect.arrayContaining(leeks));
  await page.context().close();
});

test('with its script choices combine, are told, stand in the address and can be taken back', async () => {
  const { page, complaints } = await open('trials/');
  const all = await titles(page);
  expect(await page.locator('#facets').isVisible()).toBe(false);

  await page.getByLabel('Crop').selectOption('leek');
  const leeks = await titles(page);
  await page.getByLabel('State').selectOption('growing');
  const growing = await titles(page);
  expect(growing.length).toBeGreaterThan(0);
  expect(growing.length).toBeLessThan(leeks.length);
  expect(leeks.length).toBeLessThan(all.length);
  expect(await page.getByRole('status').textContent()).toBe(`${growing.length} of ${all.length} shown`);
  expect(new URL(page.url()).search).toBe('?crop=leek&status=growing');

  await page.reload();
  expect(await titles(page)).toEqual(growing);

  await page.getByLabel('Finding').selectOption({ index: 1 });
  expect(await titles(page)).toEqual([]);
  expect(await page.getByRole('status').textContent()).toBe('No trial fits these choices.');

  await page.getByRole('button', { name: 'Show all' }).click();
  await page.getByText(`${all.length} of ${all.length} shown`).waitFor();
  expect(await titles(page)).toEqual(all);
  expect(new URL(page.url()).search).toBe('');
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('the pages of a choice and the script agree on what falls under it', async () => {
  const { page } = await open('trials/');
  for (const select of await page.locator('#choices select').all()) {
    const facet = (await select.getAttribute('name')) ?? '';
    const values = await select.locator('option').evaluateAll((all) => all.map((one) => one.getAttribute('value')));
    for (const value of values.filter(Boolean)) {
      await select.selectOption(value);
      const html = readFileSync(join(site.folder, `trials/by/${facet}/${value}/index.html`), 'utf8');
      const listed = [...html.matchAll(/<h2> ?<a href="[^"]*\/trials\/[^"]*">([^<]*)<\/a>/g)].map(([, name]) => name);
      const shown = (await titles(page)).map((name) => name.trim());
      expect(shown, `${facet}/${value}`).toEqual(listed.map((name = '') => name.replaceAll('&#39;', "'").trim()));
    }
    await select.selectOption('');
  }
  await page.context().close();
});

test('a choice in the address that is none counts as any', async () => {
  const { page, complaints } = await open('trials/?crop=no-such-crop&year=%3Cb%3E');
  expect(await titles(page)).toEqual(await page.locator('#entries h2').allTextContents());
  expect(complaints).toEqual([]);
  await page.context().close();
});
