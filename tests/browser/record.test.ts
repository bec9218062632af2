import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';

const site = inject('site');
const TRIAL = 'record/?trial=leek-wet-start';
const PHONE: BrowserContextOptions = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** A phone; whatever breaks the policy, goes to another host or carries a body is kept as a complaint. */
async function phone(options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ ...PHONE, ...options });
  const complaints: string[] = [];
  context.on('console', (message) => {
    if (/Content.Security.Policy|Refused to/i.test(message.text())) complaints.push(message.text());
  });
  context.on('weberror', (error) => complaints.push(String(error.error())));
  context.on('request', (request) => {
    const isOurs = request.url().startsWith(site.address) || request.url().startsWith('blob:');
    if (!isOurs || request.method() !== 'GET' || request.postData() !== null) complaints.push(`${request.method()} ${request.url()}`); // prettier-ignore
  });
  return { context, complaints };
}

/** The page with its trial open, and its service worker in charge. */
async function opened(context: BrowserContext, path = TRIAL): Promise<Page> {
  const page = await context.newPage();
  await page.clock.install({ time: new Date('2026-11-23T10:00:00') });
  await page.goto(site.address + path);
  await page.locator('#rows li').first().waitFor();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller) await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true })); // prettier-ignore
  });
  return page;
}

const row = (page: Page, label: string) =>
  page.locator('#rows li').filter({ has: page.locator('b', { hasText: new RegExp(`^${label}$`) }) });

async function saved(page: Page, file: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByText(`Save ${file}`).click()]);
  expect(download.suggestedFilename()).toBe(file);
  return readFileSync(await download.path(), 'utf8');
}

test('a trial is counted, measured and noted without a connection, over a reload, a closed tab and a day; nothing leaves the device', async () => {
  const { context, complaints } = await phone();
  let page = await opened(context);
  await context.setOffline(true);
  await page.fill('#scorer', 'oda');
  await row(page, '4S').getByRole('button', { name: 'one more' }).click();
  await row(page, '2M').getByRole('button', { name: 'same as last time' }).click();
  await row(page, '6H').getByRole('textbox').fill('12');
  await row(page, '7K').getByRole('button', { name: 'not checked' }).click();
  expect(await row(page, '6H').locator('.doubt').textContent()).toBe(
    '12 is fewer than the 16 on day 10; a total cannot fall.',
  );
  await row(page, '6H').getByRole('textbox').fill('41');
  expect(await row(page, '6H').locator('.doubt').textContent()).toBe('41 is more than the 40 seeds sown here.');
  await row(page, '6H').getByRole('textbox').fill('18');
  expect(await page.locator('#missed').textContent()).toMatch(/^No number yet: 8C, /);
  await page.selectOption('#m-sowing', { label: '4S' });
  await page.fill('#m-plant', '1');
  await page.fill('#m-trait', 'height (mm)');
  await page.fill('#m-value', '4,2');
  await page.click('#m-keep');
  await page.selectOption('#e-sowing', { label: '8C' });
  await page.fill('#e-what', '=knocked over, half of it');
  await page.selectOption('#e-action', 'left-out');
  await page.click('#e-keep');
  await page.waitForTimeout(500); // the device writes it down; no thumb reloads faster
  await page.reload();
  await page.locator('#rows li').first().waitFor();
  await page.close();

  page = await context.newPage();
  await page.clock.install({ time: new Date('2026-11-24T10:00:00') });
  await page.goto(site.address + TRIAL);
  await page.clock.fastForward('24:00:00');
  await page.reload();
  expect(await row(page, '6H').getByRole('textbox').inputValue()).toBe('18');
  expect(await row(page, '7K').getByRole('button', { name: 'not checked' }).getAttribute('aria-pressed')).toBe('true');
  expect(await page.locator('#when-note').textContent()).toBe('You are recording for 2026-11-23, which is not today.');
  const counts = await saved(page, 'counts.csv');
  expect(counts.split('\n').slice(0, 2)).toEqual(['sowing,day,date,germinated,scorer', 't01,6,2026-11-17,0,oda']);
  expect(counts.split('\n').filter((line) => line.includes('2026-11-23'))).toEqual([
    't01,12,2026-11-23,11,oda',
    't02,12,2026-11-23,6,oda',
    't03,12,2026-11-23,18,oda',
    't04,12,2026-11-23,NC,oda',
  ]);
  expect(await saved(page, 'measurements.csv')).toBe('sowing,day,date,plant,height (mm)\nt01,12,2026-11-23,1,4.2\n');
  expect(await saved(page, 'events.csv')).toBe('day,date,sowing,what,action\n12,2026-11-23,t05,"\'=knocked over, half of it",left-out\n'); // prettier-ignore
  expect(complaints).toEqual([]);
  await context.close();
});

test('a step is taken back; what another window changed is not written over', async () => {
  const { context, complaints } = await phone();
  const page = await opened(context);
  await row(page, '4S').getByRole('textbox').fill('15');
  await row(page, '4S').getByRole('textbox').blur();
  await page.click('#undo');
  expect(await row(page, '4S').getByRole('textbox').inputValue()).toBe('');
  const other = await context.newPage();
  await other.clock.install({ time: new Date('2026-11-23T10:00:00') });
  await other.goto(site.address + TRIAL);
  await row(other, '2M').getByRole('textbox').fill('9');
  await other.waitForTimeout(300);
  await row(page, '4S').getByRole('textbox').fill('20');
  await expect.poll(() => page.locator('#status').textContent()).toMatch(/^This trial was changed in another window/);
  expect(await row(page, '2M').getByRole('textbox').inputValue()).toBe('9');
  expect(complaints).toEqual([]);
  await context.close();
});

test('a sowings.csv is opened without its treatments, and files are brought in, differences and mistakes said', async () => {
  const { context, complaints } = await phone();
  const page = await context.newPage();
  await page.goto(`${site.address}record/`);
  const file = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  await page.setInputFiles(
    '#sowings-file',
    file('bench.csv', 'sowing;lot;treatment;seeds\r\na1;leek;hotwater;20\r\na2;leek;plain;20\r\n'),
  );
  await page.locator('#rows li').first().waitFor();
  await page.fill('#day', '5');
  await row(page, 'a1').getByRole('textbox').fill('3');
  await page.setInputFiles('#import', file('c.csv', 'sowing,day,germinated\na1,5,4\na2,5,2\n'));
  await expect.poll(() => page.locator('#problems').textContent()).toMatch(/yours was kept: a1 on day 5/);
  expect(await row(page, 'a2').getByRole('textbox').inputValue()).toBe('2');
  await page.getByText('Take the numbers of the file instead').click();
  await row(page, 'a2').getByRole('textbox').focus();
  expect(await row(page, 'a1').getByRole('textbox').inputValue()).toBe('4');
  await page.setInputFiles('#import', file('d.csv', 'sowing,day,germinated\na1,8,3\na1,9,2\na9,8,1\n'));
  await expect
    .poll(() => page.locator('#problems').textContent())
    .toMatch(/was not read in:[^]*a9[^]*totals so far cannot fall/);
  const kept = await page.evaluate(async () => {
    const opening = indexedDB.open('fairsown-record');
    await new Promise((done) => (opening.onsuccess = done));
    const all = opening.result.transaction('sessions').objectStore('sessions').getAll();
    await new Promise((done) => (all.onsuccess = done));
    return JSON.stringify(all.result);
  });
  expect(kept).toContain('a1');
  expect(kept + (await page.content())).not.toMatch(/hotwater/);
  expect(complaints).toEqual([]);
  await context.close();
});

test('everything to press is large enough for a thumb, and twice the letter size still fits', async () => {
  const { context } = await phone({ colorScheme: 'dark', reducedMotion: 'reduce' });
  const page = await opened(context);
  const small = () =>
    page.locator('#recording :is(button, input, select, a):visible').evaluateAll((all) =>
      all.map((each) => each.getBoundingClientRect()).filter(({ width, height }) => width < 47.5 || height < 47.5).length); // prettier-ignore
  expect(await small()).toBe(0);
  await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
    0,
  );
  await row(page, '4S').getByRole('textbox').focus();
  await page.keyboard.type('9');
  await page.keyboard.press('Enter');
  expect(
    await row(page, '2M')
      .getByRole('textbox')
      .evaluate((input) => input === document.activeElement),
  ).toBe(true);
  await context.close();
});

test('without JavaScript the page tells of paper and file', async () => {
  const { context } = await phone({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${site.address}record/`);
  expect(await page.locator('main').innerText()).toMatch(/needs JavaScript[^]*On paper instead[^]*counts\.csv/);
  expect(await page.locator('#recording').isVisible()).toBe(false);
  await context.close();
});

test('the worker keeps this page and its assets only, and the script is small', () => {
  const worker = readFileSync(join(site.folder, 'record', 'worker.js'), 'utf8');
  const files: string[] = JSON.parse(/\(self, (\[.*?\])/.exec(worker)?.[1] ?? '[]');
  expect(files[0]).toBe(`${site.base}record/`);
  for (const file of files.slice(1)) expect(file.slice(site.base.length)).toMatch(/^(_astro\/[^/]+|icon\.svg)$/);
  const scripts = files.filter((file) => file.endsWith('.js'));
  const bytes = scripts.map((file) => gzipSync(readFileSync(join(site.folder, file.slice(site.base.length)))).length);
  expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThan(150_000);
});
