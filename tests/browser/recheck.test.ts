import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';

const site = inject('site');
const id = 'peas-soaked-school';
const path = `trials/${id}/recheck/`;
const published = (name: string) => readFileSync(join(site.folder, 'trials', id, 'data', name));

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** The page, and what the browser complains about: a breach of the policy above all. */
async function open(scripted = true): Promise<{ context: BrowserContext; page: Page; complaints: string[] }> {
  const context = await browser.newContext({ javaScriptEnabled: scripted });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(site.address + path, { waitUntil: 'networkidle' });
  return { context, page, complaints };
}

const status = (page: Page) => page.locator('main [role=status]');
const said = async (page: Page, words: RegExp) => {
  await page.waitForFunction(
    ([source]) => new RegExp(source ?? '').test(document.querySelector('main [role=status]')?.textContent ?? ''),
    [words.source],
  );
  return status(page).innerText();
};
/** One seedling more in the last cell of the counts. */
const tampered = () => {
  const counts = published('counts.csv').toString();
  const changed = counts.replace(/(\d+)(\s*)$/, (_, number: string, end: string) => `${Number(number) + 1}${end}`);
  expect(changed).not.toBe(counts);
  return Buffer.from(changed);
};

test('works every figure out again from the files as published, within the policy of the page', async () => {
  const { context, page, complaints } = await open();
  await page.locator('#run').focus();
  await page.keyboard.press('Enter');
  expect(await said(page, /agree/)).toMatch(/^All \d+ figures agree, and every file has its published digest\.$/);
  const rows = await page.locator('tr[data-path] td:last-child').allInnerTexts();
  expect(rows.length).toBeGreaterThan(5);
  expect(new Set(rows)).toEqual(new Set(['yes']));
  const [was, is] = await page.locator('tr[data-path] td:not(:last-child)').allInnerTexts();
  expect(is).toBe(was);
  expect(await page.locator('#files').isHidden()).toBe(true);
  expect(complaints).toEqual([]);
  await context.close();
});

test('works without a connection once loaded, with a changed file too, and goes back', async () => {
  const { context, page, complaints } = await open();
  await context.setOffline(true);
  await page.locator('#choose').setInputFiles({ name: 'counts.csv', mimeType: 'text/csv', buffer: tampered() });
  expect(await said(page, /do not agree/)).toMatch(/^\d+ of \d+ figures do not agree\./);
  expect(await page.locator('#changed').innerText()).toBe('In place of the published files: counts.csv.');
  expect(await page.locator('#files li').allInnerTexts()).toEqual([
    'counts.csv is not the file that was published',
    'counts-long.csv is not what the raw files give',
    'counts-long-spreadsheet.csv is not what the raw files give',
  ]);
  const differing = page.locator('tr.differs').first();
  expect(await differing.locator('td').last().innerText()).toBe('no');
  const [was, is] = await differing.locator('td').allInnerTexts();
  expect(is).not.toBe(was);
  await page.locator('#reset').click();
  expect(await said(page, /All/)).toMatch(/every file has its published digest/);
  expect(complaints).toEqual([]);
  await context.close();
});

test('a file that somebody altered on the server shows', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.route('**/data/counts.csv', (route) => route.fulfill({ body: tampered() }));
  await page.goto(site.address + path);
  await page.locator('#run').click();
  await said(page, /do not agree/);
  expect(await page.locator('#files li').first().innerText()).toBe('counts.csv is not the file that was published');
  await context.close();
});

test('files can be dropped on the page; what is wrong with one is said', async () => {
  const { context, page, complaints } = await open();
  const drop = (name: string, text: string) =>
    page.evaluate(
      ([name = '', text = '']) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], name));
        document.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
      },
      [name, text],
    );
  await drop('counts.csv', 'sowing,day,germinated\nnowhere,5,1\n');
  expect(await said(page, /not be worked/)).toBe('It could not be worked out again.');
  expect(await page.locator('#files').innerText()).toContain('"nowhere"');
  await drop('holiday.jpg', 'x');
  await page.waitForFunction(() => document.querySelector('#unknown')?.textContent !== '');
  expect(await page.locator('#unknown').innerText()).toContain('holiday.jpg');
  await drop('broken.zip', 'x');
  expect(await said(page, /English/)).toContain('It cannot be read as a zip; it may be damaged.');
  expect(complaints).toEqual([]);
  await context.close();
});

test('the zip of all can be chosen', async () => {
  const { context, page } = await open();
  const buffer = published(`${id}.zip`);
  await page.locator('#choose').setInputFiles({ name: `${id}.zip`, mimeType: 'application/zip', buffer });
  expect(await said(page, /agree/)).toMatch(/^All \d+ figures agree, and every file has its published digest\.$/);
  await context.close();
});

test('without JavaScript the page shows the published figures and says how to check by other means', async () => {
  const { context, page } = await open(false);
  const text = await page.locator('main').innerText();
  expect(text).toContain('This page needs JavaScript. What stands below does not.');
  expect(text).toContain('Rscript analysis.R');
  expect(text).toContain(`npm run --silent recheck -- ${id}.zip`);
  expect(await page.locator('button:visible, input:visible').count()).toBe(0);
  await context.close();
});

test('its scripts weigh less than 150 kB together, gzipped', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const scripts = new Set<string>();
  page.on('response', (response) => response.url().endsWith('.js') && scripts.add(response.url()));
  await page.goto(site.address + path, { waitUntil: 'networkidle' });
  expect(scripts.size).toBeGreaterThan(0);
  const sizes = [...scripts].map((url) => gzipSync(readFileSync(join(site.folder, url.slice(site.address.length)))));
  expect(sizes.reduce((sum, { length }) => sum + length, 0)).toBeLessThan(150_000);
  await context.close();
});
