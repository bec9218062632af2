import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { generateSite } from '../bench/generate-site.ts';
import { astroDev, type AstroDev } from '../support/astro-dev.ts';
import { startBrowser } from '../support/browser.ts';

const content = mkdtempSync(join(tmpdir(), 'fairsown-dev-'));
const counts = join(content, 'trials', 'trial-002', 'counts.csv');
const report = join(content, 'trials', 'trial-001', 'report.mdx');
let server: AstroDev;
beforeAll(async () => {
  generateSite(content, 2);
  rmSync(report);
  server = await astroDev(content);
});
afterAll(async () => {
  await server?.stop();
  rmSync(content, { recursive: true, force: true });
});

/** The same counts with other last ones of the first group, four sowings of 50 seeds. */
function withLast(text: string, last: number): string {
  const [head, ...rows] = text.split('\n');
  return [head, ...rows.map((row, index) => (index < 4 ? row.replace(/\d+,\d+$/, `${last},${last}`) : row))].join('\n');
}

test('what is saved shows in the open page by itself; a mistake is said, and the page comes back when it is mended', async () => {
  const good = readFileSync(counts, 'utf8');
  const browser = await startBrowser();
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(60_000);
    await page.goto(`${server.address}trials/trial-002/`);
    const shows = (text: string) => page.waitForFunction((wanted) => document.body?.textContent.includes(wanted), text);

    writeFileSync(counts, withLast(good, 49));
    await shows('196 of 200');

    writeFileSync(counts, withLast(good, 51));
    await vi.waitFor(() => expect(server.output()).toContain('found 51, but 50 seeds were sown'), { timeout: 60_000 });
    expect(server.output()).toMatch(/counts\.csv:2:\d+ /);
    // The page may be loaded anew at any moment, so everything is asked in one go.
    const overlay = (wanted: string | null) =>
      page.waitForFunction((text) => {
        const said = document.querySelector('vite-error-overlay')?.shadowRoot?.textContent;
        return text === null ? said === undefined : said?.includes(text);
      }, wanted);
    await overlay('found 51, but 50 seeds were sown');
    await shows('196 of 200');

    writeFileSync(counts, withLast(good, 49));
    await overlay(null);
    await shows('196 of 200');
    writeFileSync(counts, withLast(good, 48));
    await shows('192 of 200');
  } finally {
    await browser.close();
  }
});

test('a text that is added while dev runs shows, and goes again', async () => {
  const page = () => fetch(`${server.address}trials/trial-001/`).then((answer) => answer.text());
  const shows = async () => (await page()).includes('Words that came later.');
  const wait = { timeout: 60_000, interval: 500 };
  expect(await shows()).toBe(false);
  writeFileSync(report, 'Words that came later.\n');
  await vi.waitFor(async () => expect(await shows()).toBe(true), wait);
  rmSync(report);
  await vi.waitFor(async () => expect(await shows()).toBe(false), wait);
});
