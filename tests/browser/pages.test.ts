import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';

const site = inject('site');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** Opens a page; whatever the browser complains about (a blocked load, a policy, a missing file) fails the test. */
async function open(path: string, options: BrowserContextOptions = {}): Promise<{ page: Page; complaints: string[] }> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on(
    'response',
    (response) => response.status() >= 400 && complaints.push(`${response.status()}: ${response.url()}`),
  );
  page.on(
    'request',
    (request) => !request.url().startsWith(site.address) && complaints.push(`elsewhere: ${request.url()}`),
  );
  await page.goto(site.address + path);
  await page.evaluate(() => document.fonts.ready);
  return { page, complaints };
}

describe.each(site.pages)('/%s', (path) => {
  test('breaks no rule of its own policy and loads all that it names', async () => {
    const { page, complaints } = await open(path);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test.each(['light', 'dark'] as const)('has no fault that axe can find, %s', async (colorScheme) => {
    const { page } = await open(path, { colorScheme, bypassCSP: true });
    await page.locator('details').evaluateAll((all) => all.forEach((details) => details.setAttribute('open', '')));
    await page.evaluate(axe);
    const violations = await page.evaluate(async () => {
      const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      const { violations } = await axe.run(document, { runOnly: tags });
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
      );
    });
    expect(violations).toEqual([]);
    await page.context().close();
  });

  test('fits windows of 320 to 1280 pixels', async () => {
    const { page } = await open(path);
    for (const width of [320, 360, 390, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      const { wide, names } = await page.evaluate(() => {
        const { clientWidth, scrollWidth } = document.documentElement;
        const isFramed = (element: Element) =>
          element.closest('.table, pre') !== null && !element.matches('.table, pre');
        const names = [...document.querySelectorAll('body *')]
          .filter((element) => element.getBoundingClientRect().right > clientWidth + 1 && !isFramed(element))
          .map((element) => `${element.tagName}.${element.getAttribute('class')}`);
        return { wide: scrollWidth - clientWidth, names };
      });
      expect({ width, wide, names: wide > 0 ? names : [] }).toEqual({ width, wide: 0, names: [] });
    }
    await page.context().close();
  });
});

test('the first press of Tab offers to skip to the content, and does', async () => {
  const { page } = await open('');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('#content');
  const box = await page.locator('a.skip').boundingBox();
  expect(box?.y).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
  await page.context().close();
});

test('what is folded away on screen is open on paper, but for the numbers of charts', async () => {
  const report = site.pages.find((page) => /^trials\/[^/]+\/$/.test(page)) ?? '';
  const { page } = await open(report);
  await page.emulateMedia({ media: 'print' });
  const heights = await page
    .locator(':not(figure) > details > :not(summary)')
    .evaluateAll((contents) => contents.map((content) => content.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(0);
  expect(Math.min(...heights)).toBeGreaterThan(0);
  expect(await page.locator('nav:visible').count()).toBe(0);
  await page.context().close();
});

test('focus can be seen, and links in lists are large enough to hit', async () => {
  const { page } = await open('', { viewport: { width: 390, height: 800 } });
  const small = await page
    .locator('nav a, summary')
    .evaluateAll(
      (targets) =>
        targets.map((target) => target.getBoundingClientRect()).filter(({ width, height }) => width < 24 || height < 24)
          .length,
    );
  expect(small).toBe(0);
  await page.locator('nav a').first().focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle)).toBe('solid');
  await page.context().close();
});
