import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';

const site = inject('site');

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** The plan page at phone size; complaints of the browser and breaches of the page's policy are kept. */
async function open(options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on('request', (request) => requests.push(request.url()));
  if (options.javaScriptEnabled !== false) {
    await page.exposeFunction('complain', (text: string) => complaints.push(text));
    await page.addInitScript(() =>
      document.addEventListener('securitypolicyviolation', ({ violatedDirective }) =>
        (globalThis as unknown as { complain(text: string): void }).complain(`policy: ${violatedDirective}`),
      ),
    );
  }
  await page.goto(`${site.address}plan/`);
  return { page, complaints, requests };
}

const simulated = (page: Page) => page.getByText('2,000 trials simulated.').waitFor();
const first = (page: Page) => page.locator('#first').innerText();

test('a plan is worked out: by formula at once, by simulation soon, with charts and tables', async () => {
  const { page, complaints } = await open();
  await simulated(page);
  expect(await first(page)).toMatch(
    /^With 4 trays of 50 seeds for each treatment, a difference of 10 per 100 \(70 of 100 come up instead of 80\) would be shown in about \d\d of 100 such trials\.$/,
  );
  expect(await page.locator('#warnings').innerText()).toContain('missed more often than shown');
  expect(await page.locator('#assumed').innerText()).toContain('φ = 2');
  expect(await page.locator('#result .drawing svg').count()).toBe(2);
  expect(await page.locator('#chance .drawing').getAttribute('aria-label')).toContain('4 trays: ');
  await page.locator('#result > details > summary').click();
  const row = page.locator('#numbers tr', { hasText: 'Chance to show the difference' });
  const [, found = '', formula = ''] = /([\d.]+) ± [\d.]+ of 100\s+(\d+) of 100/.exec(await row.innerText()) ?? [];
  expect(Math.abs(Number(found) - Number(formula))).toBeLessThan(8);
  expect(await page.locator('#aloud').innerText()).toBe(await first(page));
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('a changed number is answered by formula within 200 ms, and simulated within 3 s', async () => {
  const { page } = await open();
  await simulated(page);
  const { formula, whole } = await page.evaluate(async () => {
    const now = () => document.querySelector('#first')?.textContent ?? '';
    const until = async (isSo: () => boolean) => {
      while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 1));
    };
    const field = document.querySelector<HTMLInputElement>('#units');
    const before = now();
    const start = performance.now();
    if (field) field.value = '6';
    field?.dispatchEvent(new Event('input', { bubbles: true }));
    await until(() => now() !== before);
    const formula = performance.now() - start;
    await until(() => document.querySelector('#state')?.textContent?.startsWith('Simulating') ?? false);
    const started = performance.now();
    await until(() => document.querySelector('#state')?.textContent === '2,000 trials simulated.');
    return { formula, whole: performance.now() - started };
  });
  expect(formula).toBeLessThan(200);
  expect(whole).toBeLessThan(3000);
  await page.context().close();
});

test('it goes on working offline, and asks for nothing once it is loaded', async () => {
  const { page, complaints, requests } = await open();
  await simulated(page);
  await page.context().setOffline(true);
  const before = requests.length;
  await page.locator('#measure').selectOption('height');
  await page.locator('#units').fill('8');
  await simulated(page);
  expect(await first(page)).toMatch(
    /^With 8 trays for each treatment, a difference of 5 mm \(a mean of 45 mm instead of 40 mm\)/,
  );
  expect(await page.locator('#seeds').isVisible()).toBe(false);
  await page.locator('#measure').selectOption('t50');
  await page.locator('#every').fill('2');
  await simulated(page);
  expect(await page.locator('#assumed').innerText()).toContain('checks at gaps of 2 days');
  expect(requests.slice(before)).toEqual([]);
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('a plain choice fills in its number, and a number of one’s own is kept', async () => {
  const { page } = await open();
  await page.locator('#choice').selectOption('uneven');
  expect(await page.locator('#spread').inputValue()).toBe('4');
  await page.locator('#spread').fill('3');
  expect(await page.locator('#choice').inputValue()).toBe('own');
  await page.locator('#units').fill('5');
  expect(await page.locator('#spread').inputValue()).toBe('3');
  await page.locator('#measure').selectOption('mass');
  expect(await page.locator('#spread').inputValue()).toBe('0.2');
  await page.context().close();
});

test('an answer is never mixed from two plans: what is still being simulated is dropped at a change', async () => {
  const { page } = await open();
  await page.getByText(/^Simulating: [1-9]/).waitFor();
  await page.locator('#units').fill('12');
  await simulated(page);
  const after = await first(page);
  await page.locator('#units').fill('11');
  await simulated(page);
  await page.locator('#units').fill('12');
  await simulated(page);
  expect(await first(page)).toBe(after);
  await page.context().close();
});

test('where no worker can be had the formula answers, and that is said', async () => {
  const { page } = await open();
  await simulated(page);
  const context = page.context();
  const other = await context.newPage();
  await other.addInitScript(() => Object.defineProperty(globalThis, 'Worker', { value: undefined }));
  await other.goto(`${site.address}plan/`);
  await other.locator('#units').fill('9');
  await other.getByText('does not run the simulation').waitFor();
  expect(await other.locator('#rest').innerText()).toContain('Worked out by formula only');
  await context.close();
});

test('what cannot be worked out is said with its remedy', async () => {
  const { page, complaints } = await open();
  await page.locator('#units').fill('2.5');
  await page.locator('#base').fill('');
  expect(await page.locator('#faults li').allInnerTexts()).toEqual([
    'How many usually come up must lie between 0 and 100, such as 80; 0 and 100 leave nothing to see.',
    'Trays of each must be a whole number from 1 to 50.',
  ]);
  expect(await page.locator('#result').isVisible()).toBe(false);
  await page.locator('#base').fill('80');
  await page.locator('#units').fill('1');
  expect(await first(page)).toMatch(/^With one tray of each, such a trial cannot tell/);
  await page.locator('#crops').fill('6');
  await simulated(page);
  expect(await page.locator('#rest').innerText()).toContain('All 6 crops taken together');
  expect(complaints).toEqual([]);
  await page.context().close();
});

test('every field has a name, is large enough to hit, and can be reached by keyboard', async () => {
  const { page } = await open();
  const fields = page.locator('#design :is(input, select):visible');
  expect(await fields.count()).toBe(8);
  for (const field of await fields.all()) {
    const id = await field.getAttribute('id');
    expect(await page.locator(`label[for=${id}]`).innerText()).not.toBe('');
    expect((await field.boundingBox())?.height).toBeGreaterThanOrEqual(24);
  }
  await page.locator('#measure').focus();
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('base');
  await page.context().close();
});

test('without JavaScript there are tables of common cases, and no form that does nothing', async () => {
  const { page, complaints } = await open({ javaScriptEnabled: false });
  expect(await page.locator('#design').isVisible()).toBe(false);
  expect(await page.locator('#result').isVisible()).toBe(false);
  expect(await page.locator('noscript p').isVisible()).toBe(true);
  const rows = await page.locator('table').first().locator('tbody tr').allInnerTexts();
  expect(rows).toHaveLength(6);
  const shown = rows.map((row) => Number(row.split('\t')[1]));
  expect(shown).toEqual(shown.toSorted((a, b) => a - b));
  expect(complaints).toEqual([]);
  await page.context().close();
});
