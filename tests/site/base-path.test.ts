import {
  appendFileSync,
  cpSync,
  existsSync,
  globSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { XMLParser } from 'fast-xml-parser';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { astroBuild } from '../support/build-site.ts';
import { expectAtom } from '../support/expect-atom.ts';

const demonstration = join(import.meta.dirname, '..', '..', 'content');
const OLD_AND_CHANGED = 'aliases: [three-herbs]\nchanges: [{ date: 2026-06-01, what: A count was mistyped }]\n';
let folder: string;
let built: ReturnType<typeof astroBuild>;

/** A group's own content folder, published below a path of its host. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-base-'));
  const content = join(folder, 'content');
  for (const part of ['lots.yaml', 'people.yaml', 'trials/herbs-lit-or-covered']) {
    cpSync(join(demonstration, part), join(content, part), { recursive: true });
  }
  writeFileSync(
    join(content, 'site.yaml'),
    'name: Our <bench> & "garden"\nbase: https://example.org/garden/\nlanguage: en-GB\nlicence: CC-BY-4.0\n',
  );
  appendFileSync(join(content, 'trials/herbs-lit-or-covered/trial.yaml'), OLD_AND_CHANGED);
  appendFileSync(
    join(content, 'trials/herbs-lit-or-covered/report.mdx'),
    '\n![Sage in the light](photos/14-sage-lit.png)\n',
  );
  const lots = readFileSync(join(content, 'lots.yaml'), 'utf8');
  writeFileSync(
    join(content, 'lots.yaml'),
    lots.replace('crop: dill', 'crop: Möhre / "Karotte" <b>').replace('crop: chives', 'crop: лук'),
  );
  built = astroBuild(join(folder, 'dist'), content);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('another content folder is published below its own address', () => {
  expect(built.output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(built.status).toBe(0);
  expect(globSync('trials/*/index.html', { cwd: join(folder, 'dist') }).toSorted()).toEqual([
    'trials/herbs-lit-or-covered/index.html',
    'trials/three-herbs/index.html',
  ]);
});

test('every address on every page begins with the base path and leads to a file', () => {
  const dist = join(folder, 'dist');
  for (const page of globSync('**/*.html', { cwd: dist })) {
    const html = readFileSync(join(dist, page), 'utf8');
    for (const [, address = ''] of html.matchAll(/ (?:href|src)="(\/[^"#]*)/g)) {
      expect(address, page).toMatch(/^\/garden\//);
      const file = join(dist, address.slice('/garden/'.length));
      expect(existsSync(address.endsWith('/') ? join(file, 'index.html') : file), `${address} on ${page}`).toBe(true);
    }
    expect(/rel="canonical" href="([^"]*)"/.exec(html)?.[1]).toMatch(/^https:\/\/example\.org\/garden\//);
  }
});

test('a picture in a text is the published one, also where the page is kept from the last build', () => {
  const dist = join(folder, 'dist');
  const shown = () => /<img src="\/garden\/(trials\/[^"]*)" alt="Sage in the light"/.exec(text('trials/herbs-lit-or-covered/index.html'))?.[1]; // prettier-ignore
  const before = shown();
  expect(before && existsSync(join(dist, before))).toBe(true);
  expect(astroBuild(dist, join(folder, 'content')).status).toBe(0);
  expect(shown()).toBe(before);
  expect(existsSync(join(dist, before ?? ''))).toBe(true);
  expect(globSync('_astro/**/*.{png,jpg,jpeg,webp,avif}', { cwd: dist })).toEqual([]); // none as it was taken
});

const text = (file: string) => readFileSync(join(folder, 'dist', file), 'utf8');
const HOME = 'https://example.org/garden/';

test('an old address leads on to where the trial is now, without a script', () => {
  const html = text('trials/three-herbs/index.html');
  expect(html).toContain('<meta http-equiv="refresh" content="0; url=/garden/trials/herbs-lit-or-covered/">');
  expect(html).toContain(`<link rel="canonical" href="${HOME}trials/herbs-lit-or-covered/">`);
  expect(html).toContain('<a href="/garden/trials/herbs-lit-or-covered/"');
  expect(html).not.toContain('<script');
});

test('the list of pages names every page once by its own address, and no old one', () => {
  const { sitemapindex } = new XMLParser().parse(text('sitemap-index.xml'));
  expect(sitemapindex.sitemap.loc).toBe(`${HOME}sitemap-0.xml`);
  const listed = new XMLParser().parse(text('sitemap-0.xml')).urlset.url.map(({ loc }: { loc: string }) => loc);
  const pages = globSync('**/index.html', { cwd: join(folder, 'dist') }).map((page) =>
    page.replace(/index\.html$/, ''),
  );
  expect(listed.toSorted()).toEqual(
    pages.filter((page) => page !== 'trials/three-herbs/').map((page) => HOME + page).toSorted(), // prettier-ignore
  );
  expect(text('robots.txt')).toContain(`Sitemap: ${HOME}sitemap-index.xml`);
});

test('the feed holds the trial and the change of its report, under its own address', () => {
  const { entry, link } = expectAtom(text('feed.xml'));
  expect(entry.map(({ id }) => id)).toEqual([
    `${HOME}trials/herbs-lit-or-covered/#change-1`,
    `${HOME}trials/herbs-lit-or-covered/`,
  ]);
  expect(link.map((each) => each['@_href'])).toEqual([HOME, `${HOME}feed.xml`]);
});

test('every page has a picture for where it is shared, a report one of its own', () => {
  for (const page of globSync('**/*.html', { cwd: join(folder, 'dist') })) {
    const picture = /<meta property="og:image" content="([^"]*)"/.exec(text(page))?.[1] ?? '';
    expect(picture.startsWith(HOME), page).toBe(true);
    expect(existsSync(join(folder, 'dist', picture.slice(HOME.length))), picture).toBe(true);
  }
  const report = text('trials/herbs-lit-or-covered/index.html');
  expect(report).toContain(`content="${HOME}trials/herbs-lit-or-covered/preview.png"`);
  expect(report).toContain('<meta property="og:locale" content="en_GB">');
});

test('the JSON Schemas name their own address', () => {
  expect(JSON.parse(text('schema/trial.json')).$id).toBe(`${HOME}schema/trial.json`);
});

test('a name with signs of HTML stays a name', () => {
  const html = readFileSync(join(folder, 'dist', 'index.html'), 'utf8');
  expect(html).toContain('<title>Our &lt;bench&gt; &amp; &quot;garden&quot;</title>');
  expect(html.replaceAll(/"[^"]*"/g, '')).not.toContain('<bench>');
});

test('crops of any name stand at addresses that every host takes, and keep their names', () => {
  const page = (crop: string) => readFileSync(join(folder, 'dist', 'trials/by/crop', crop, 'index.html'), 'utf8');
  expect(page('moehre-karotte-b')).toContain('Trials with Möhre / &quot;Karotte&quot; &lt;b&gt;</h1>');
  expect(page('43b-443-43a')).toContain('Trials with лук</h1>');
  for (const file of globSync('**/*', { cwd: join(folder, 'dist') })) expect(file).toMatch(/^[\w./-]+$/);
});

test('a content folder that moved is built from where it is now', () => {
  renameSync(join(folder, 'content'), join(folder, 'moved'));
  const { status, output } = astroBuild(join(folder, 'dist'), join(folder, 'moved'));
  expect(output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(status).toBe(0);
});
