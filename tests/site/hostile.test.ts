import { globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse as parseCsv } from 'csv-parse/sync';
import { XMLValidator } from 'fast-xml-parser';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { jsonSchema } from '../../src/trial/schema/json-schema.ts';
import { YAML_FILES } from '../../src/trial/schema/files.ts';
import { LONGEST_TEXT } from '../../src/trial/schema/field/text-field.ts';
import { startBrowser } from '../support/browser.ts';
import { astroBuild, serve } from '../support/build-site.ts';
import {
  HOSTILE_TEXT,
  KEPT_OUT,
  PLAN_KEYS,
  REFUSED_TRIALS,
  TEXT_KEYS,
  hostileContent,
} from '../support/hostile-content.ts';
import { openPage } from '../support/open-page.ts';
import { readPdf } from '../support/read-pdf.ts';
import { runRScript } from '../support/run-r-script.ts';

/* A site each of whose texts is meant for some parser, built, and opened in a real browser: all of it must stay text. */

let folder: string;
let address: string;
let close: () => Promise<void>;
let browser: Browser;
let context: BrowserContext;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-hostile-'));
  hostileContent(folder);
  const { status, output } = astroBuild(join(folder, 'dist'), join(folder, 'content'));
  expect(status, output).toBe(0);
  const served = await serve(join(folder, 'dist'), '/');
  [address, close] = [`http://localhost:${served.port}/`, served.close];
  browser = await startBrowser();
  context = await browser.newContext();
  context.on('dialog', (dialog) => {
    boxes.push(`box: ${dialog.message()}`);
    dialog.dismiss().catch(() => {});
  });
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      console.error(`policy broken: ${violatedDirective} ${blockedURI}`),
    );
  });
});
afterAll(async () => {
  await browser?.close();
  await close?.();
  rmSync(folder, { recursive: true, force: true });
});

const published = (name: string) => readFileSync(join(folder, 'dist', name), 'utf8');
const files = (pattern: string) => globSync(pattern, { cwd: join(folder, 'dist') }).map((file) => file.replaceAll('\\', '/')).toSorted(); // prettier-ignore

/** What the browser complains of on a page, a box or window that opens among it. */
async function open(path: string): Promise<{ page: Page; complaints: string[] }> {
  const opened = await openPage(context, address + path, address);
  boxes.splice(0).forEach((box) => opened.complaints.push(box));
  return opened;
}
const boxes: string[] = [];

test('every field of the format that holds free text is hostile here', () => {
  const keys = Object.keys(YAML_FILES).flatMap((file) => textKeys(jsonSchema(file as keyof typeof YAML_FILES, '')));
  expect(keys.length).toBeGreaterThan(20);
  expect(new Set(keys)).toEqual(new Set([...keys.filter((key) => TEXT_KEYS.has(key)), ...PLAN_KEYS]));
  const written = ['site', 'people', 'lots', 'questions']
    .map((name) => `${name}.yaml`)
    .concat(globSync('trials/*/{trial.yaml,photos/captions.yaml}', { cwd: join(folder, 'content') }))
    .map((file) => readFileSync(join(folder, 'content', file), 'utf8'));
  const lines = written.flatMap((text) => text.split('\n'));
  for (const key of TEXT_KEYS)
    expect(
      lines.some((line) => line.trim().replace(/^- /, '').startsWith(`${key}:`)),
      key,
    ).toBe(true);
});

/** Keys whose value, or whose entries, are free text. */
function textKeys(schema: unknown, key = ''): string[] {
  if (schema === null || typeof schema !== 'object') return [];
  const isText = 'maxLength' in schema && schema.maxLength === LONGEST_TEXT;
  if (isText) return [key];
  const { properties = {}, ...rest } = schema as { properties?: object };
  const named = Object.entries(properties).flatMap(([name, below]) => textKeys(below, name));
  return [...named, ...Object.values(rest).flatMap((below) => textKeys(below, key))];
}

test('what is refused is left out and said; nothing of it, of comments or of files outside is published', () => {
  const list = published('trials/index.html');
  const left = list.slice(list.indexOf('id="left-out"'));
  for (const trial of REFUSED_TRIALS) {
    expect(left).toContain(`<h3>${trial}</h3>`);
    expect(files(`trials/${trial}/**`)).toEqual([]);
  }
  const texts = files('**/*').filter((file) => /\.(html|svg|xml|csv|json|yaml|txt|R)$/.test(file));
  for (const file of texts) expect(published(file).includes(KEPT_OUT), file).toBe(false);
});

test('no byte of a page or picture opens an element that a contributor wrote', () => {
  for (const file of files('**/*.{html,svg,xml}')) {
    const outside = published(file).replace(/="[^"]*"/g, '=""'); // inside quotes a "<" is text for a browser as well
    expect(/<script>alert|<img src=x|<[a-z][^<>]*\son\w+=/i.exec(outside)?.[0], file).toBe(undefined);
  }
});

test('no page runs anything, loads anything from elsewhere or breaks its policy, and each shows the text as text', async () => {
  const isOneOfMany = (path: string) => /^trials\/by\/(measure|status|treatment|verdict|year)\/./.test(path);
  const pages = files('**/*.html')
    .map((file) => file.replace(/index\.html$/, ''))
    .filter((path) => !isOneOfMany(path));
  expect(pages.length).toBeGreaterThan(40);
  for (const path of pages) {
    const { page, complaints } = await open(path);
    const found = await page.evaluate(() => {
      const elements = [...document.querySelectorAll('*')];
      const attributes = elements.flatMap((element) =>
        [...element.attributes].map(({ name, value }) => ({ name, value })),
      );
      return {
        handlers: attributes.filter(({ name }) => /^on|^style$/.test(name)),
        addresses: attributes.filter(
          ({ name, value }) =>
            /^(xlink:)?(href|src|action|data|poster|cite)$/.test(name) &&
            !/^(https?:\/\/|mailto:|\/|\.|#|\?|[\w-]+\/)/.test(value),
        ),
        scripts: [...document.scripts].filter(
          ({ type, src, text }) =>
            /^$|javascript|module/.test(type) &&
            (text.includes('alert(') || !`${src || location.origin}`.startsWith(location.origin)),
        ).length,
        images: [...document.images].filter(({ src }) => !src.startsWith(location.origin)).map(({ src }) => src),
        wide: document.documentElement.scrollWidth > innerWidth,
      };
    });
    expect({ path, complaints, ...found }).toEqual({
      path,
      complaints: [],
      handlers: [],
      addresses: [],
      scripts: 0,
      images: [],
      wide: false,
    });
    if (/^trials\/[^/]+\/$/.test(path))
      expect(await page.locator('main').innerText(), path).toContain(
        '<script>alert(1)</script><img src=x onerror=alert(2)>',
      );
    await page.close();
  }
});

test('the page for the bench shows and saves hostile names as they are', async () => {
  const { page, complaints } = await open('record/?trial=leek-wet-start');
  await page.locator('#rows li').first().waitFor();
  expect(await page.locator('#rows li b').first().innerText()).toContain('<img src=x onerror=alert(6)>');
  await page.fill('#scorer', HOSTILE_TEXT.slice(0, 90));
  await page.locator('#rows li').first().getByRole('button', { name: 'one more' }).click();
  await page.selectOption('#e-sowing', { index: 1 });
  await page.fill('#e-what', `=1+1 ${HOSTILE_TEXT}`);
  await page.selectOption('#e-action', 'left-out');
  await page.click('#e-keep');
  await page.locator('#rows li').nth(1).getByRole('textbox').fill('999');
  expect(await page.locator('#rows li .doubt:visible').first().innerText()).toContain('999');
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByText('Save events.csv').click()]);
  const rows = parseCsv(readFileSync(await download.path(), 'utf8')) as string[][];
  expect(rows).toHaveLength(2);
  expect(rows[1]?.join()).toContain("'=1+1");
  expect(boxes.concat(complaints)).toEqual([]);
  await page.close();
});

test('the page for re-checking works hostile files out, and tells of hostile names of files', async () => {
  const { page, complaints } = await open('trials/onion-dried-before-freezing/recheck/');
  await page.locator('#run').click();
  await expect.poll(() => page.locator('main [role=status]').innerText()).toMatch(/figures agree/);
  const name = `<img src=x onerror=alert(1)>.jpg`;
  await page.locator('#choose').setInputFiles({ name, mimeType: 'image/jpeg', buffer: Buffer.from('x') });
  await expect.poll(() => page.locator('#unknown').innerText()).toContain(name);
  const broken = Buffer.from(`sowing,day,germinated\n"${HOSTILE_TEXT.replaceAll('"', '""')}",5,1\n`);
  await page.locator('#choose').setInputFiles({ name: 'counts.csv', mimeType: 'text/csv', buffer: broken });
  await expect.poll(() => page.locator('#files').innerText()).toContain('<script>');
  expect(boxes.concat(complaints)).toEqual([]);
  await page.close();
});

test('a search shows what it finds as text', async () => {
  const { page, complaints } = await open('search/?q=alert');
  await page.locator('#search-results li').first().waitFor();
  expect(await page.locator('#search-results').innerText()).toContain('onerror');
  expect(boxes.concat(complaints)).toEqual([]);
  await page.close();
});

test('feed, lists of pages, structured data, tables and citations can be read by their readers', () => {
  for (const file of files('**/*.xml')) expect(XMLValidator.validate(published(file)), file).toBe(true);
  for (const file of files('**/*.json')) expect(() => JSON.parse(published(file)), file).not.toThrow();
  for (const file of files('**/*.{yaml,cff}')) expect(() => parseYaml(published(file)), file).not.toThrow();
  for (const file of files('**/*.html')) {
    for (const [, json = ''] of published(file).matchAll(/<script type="application\/ld\+json">([^]*?)<\/script>/g)) expect(() => JSON.parse(json), file).not.toThrow(); // prettier-ignore
  }
  const tables = files('trials/*/data/*.csv');
  expect(tables.length).toBeGreaterThan(20);
  for (const file of tables) {
    const rows = parseCsv(published(file), { bom: true }) as string[][]; // throws where a row is longer than the first
    expect(rows.length, file).toBeGreaterThan(0);
    if (!/-(long|spreadsheet)\.csv$/.test(file)) continue;
    for (const cell of rows.flat()) expect(/^[=+@\t\r]|^-(?!\d)/.test(cell), `${file}: ${cell}`).toBe(false);
  }
});

test('R works the same numbers out of hostile files, and runs nothing of them', async () => {
  for (const trial of ['onion-dried-before-freezing']) {
    const data = join(folder, 'dist', 'trials', trial, 'data');
    const given = globSync('*.{csv,yaml,json,R}', { cwd: data }).map(
      (name) => [name, readFileSync(join(data, name))] as const,
    );
    const { printed, error } = await runRScript('analysis.R', Object.fromEntries(given));
    expect(error, printed).toBe(null);
    expect(printed).not.toMatch(/uid=\d/);
  }
});

test('a summary on paper shows it letter by letter', async () => {
  const { text } = await readPdf(readFileSync(join(folder, 'dist/trials/onion-dried-before-freezing/summary.pdf')));
  for (const part of ['<script>alert(1)</script>', '#panic("x")', '#read("/etc/passwd")', '{{x}}', '$x^2$'])
    expect(text).toContain(part);
  expect(text).not.toContain('root:');
});
