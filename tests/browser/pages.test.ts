import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { startBrowser } from '../support/browser.ts';
import { openPage } from '../support/open-page.ts';

const site = inject('site');
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
/** As readers have it, and one without the pages' policy, for what tests put into a page. */
let strict: BrowserContext;
let loose: BrowserContext;
beforeAll(async () => {
  browser = await startBrowser();
  strict = await browser.newContext();
  loose = await browser.newContext({ bypassCSP: true });
});
afterAll(() => browser.close());

const open = (path: string, context = strict) => openPage(context, site.address + path, site.address);

/** What is wider than the window, tables and code in frames of their own apart. */
const tooWide = (page: Page) =>
  page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    const isFramed = (element: Element) => element.closest('.table, pre') !== null && !element.matches('.table, pre');
    return [...document.querySelectorAll('body *')]
      .filter((element) => scrollWidth > clientWidth && element.getBoundingClientRect().right > clientWidth + 1)
      .filter((element) => !isFramed(element))
      .map((element) => `${element.tagName}.${element.getAttribute('class')}`)
      .concat(scrollWidth > clientWidth ? [`${scrollWidth - clientWidth} pixels`] : []);
  });

/** Pictures that are pressed or stretched out of the shape that they name. */
const outOfShape = (page: Page) =>
  page.evaluate(() =>
    [...document.images]
      .filter((image) => image.checkVisibility() && image.getAttribute('height') !== null)
      .filter((image) => {
        const { width, height } = image.getBoundingClientRect();
        return Math.abs((width * Number(image.getAttribute('height'))) / (height * Number(image.getAttribute('width'))) - 1) > 0.02; // prettier-ignore
      })
      .map(({ src }) => src),
  );

describe.each(site.pages)('/%s', (path) => {
  test('breaks no rule of its own policy, loads all that it names and fits every window', async () => {
    const { page, complaints } = await open(path);
    for (const width of [320, 360, 390, 768, 1280, 1920]) {
      await page.setViewportSize({ width, height: 800 }); // 320: a window of 1280 enlarged to 400 %
      expect(await tooWide(page), `${width} pixels`).toEqual([]);
      expect(await outOfShape(page), `${width} pixels`).toEqual([]);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  test('has no fault that axe can find, light or dark, and fits with letters twice as large', async () => {
    const { page } = await open(path, loose);
    await page.locator('details').evaluateAll((all) => all.forEach((details) => details.setAttribute('open', '')));
    await page.evaluate(axe);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const violations = await page.evaluate(async () => {
        const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
        const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
        const { violations } = await axe.run(document, { runOnly: tags });
        return violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary}`),
        );
      });
      expect(violations, colorScheme).toEqual([]);
    }
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    for (const width of [390, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await tooWide(page), `${width} pixels`).toEqual([]);
    }
    await page.close();
  });
});

const report = site.pages.find((page) => /^trials\/[^/]+\/$/.test(page)) ?? '';

test.each(['', 'trials/', report])(
  '/%s can be walked through by keyboard: every stop is seen, in order, and none holds fast',
  async (path) => {
    const { page } = await open(path);
    await page.setViewportSize({ width: 1280, height: 800 });
    const stops = await page.evaluate(() => {
      const all = [...document.querySelectorAll<HTMLElement>('a[href], button, select, summary, [tabindex="0"]')];
      return all.filter((element) => element.checkVisibility()).length;
    });
    const seen: number[] = [];
    for (let stop = 0; stop < stops; stop += 1) {
      await page.keyboard.press('Tab');
      const { order, box, outline, height } = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const { top, bottom, width } = element.getBoundingClientRect();
        const { outlineStyle, outlineWidth } = getComputedStyle(element);
        return {
          order: [...document.querySelectorAll('*')].indexOf(element),
          box: { top, bottom, width },
          outline: `${outlineStyle} ${outlineWidth}`,
          height: innerHeight,
        };
      });
      expect(outline).toBe('solid 3px');
      expect(box.width).toBeGreaterThan(0);
      expect(box.bottom).toBeGreaterThan(0);
      expect(box.top).toBeLessThan(height);
      seen.push(order);
    }
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(new Set(seen).size).toBe(stops);
    await page.close();
  },
);

test('with forced colours, findings, charts and focus stay visible', async () => {
  const context = await browser.newContext({ forcedColors: 'active', colorScheme: 'dark' });
  const { page } = await open(report, context);
  const hidden = await page.evaluate(() => {
    const paper = getComputedStyle(document.body).backgroundColor;
    const drawn = [...document.querySelectorAll('.shape, .drawing text, .ruler line, .ruler circle')];
    return drawn.filter((element) => {
      const { stroke, fill, borderBottomColor } = getComputedStyle(element);
      const colours = element.matches('.shape') ? [borderBottomColor] : [stroke, fill];
      return colours.every((colour) => colour === 'none' || colour === paper);
    }).length;
  });
  expect(hidden).toBe(0);
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => getComputedStyle(document.activeElement as Element).outlineStyle)).toBe('solid');
  await context.close();
});

test('the first press of Tab offers to skip to the content, and does', async () => {
  const { page } = await open('');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('#content');
  const box = await page.locator('a.skip').boundingBox();
  expect(box?.y).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
  await page.close();
});

test('what is folded away on screen is open on paper, but for the numbers of charts', async () => {
  const { page } = await open(report);
  await page.emulateMedia({ media: 'print' });
  const heights = await page
    .locator(':not(figure) > details > :not(summary)')
    .evaluateAll((contents) => contents.map((content) => content.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(0);
  expect(Math.min(...heights)).toBeGreaterThan(0);
  expect(await page.locator('nav:visible').count()).toBe(0);
  await page.close();
});

test('links in lists are large enough to hit', async () => {
  const { page } = await open('');
  await page.setViewportSize({ width: 390, height: 800 });
  const small = await page
    .locator('nav a, summary, select, button')
    .evaluateAll(
      (targets) =>
        targets.map((target) => target.getBoundingClientRect()).filter(({ width, height }) => width < 24 || height < 24)
          .length,
    );
  expect(small).toBe(0);
  await page.close();
});
