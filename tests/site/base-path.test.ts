import { cpSync, existsSync, globSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { astroBuild } from '../support/build-site.ts';

const demonstration = join(import.meta.dirname, '..', '..', 'content');
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
  built = astroBuild(join(folder, 'dist'), content);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('another content folder is published below its own address', () => {
  expect(built.output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(built.status).toBe(0);
  expect(globSync('trials/*/index.html', { cwd: join(folder, 'dist') })).toHaveLength(1);
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

test('a name with signs of HTML stays a name', () => {
  const html = readFileSync(join(folder, 'dist', 'index.html'), 'utf8');
  expect(html).toContain('<title>Our &lt;bench&gt; &amp; &quot;garden&quot;</title>');
  expect(html.replaceAll(/"[^"]*"/g, '')).not.toContain('<bench>');
});

test('a content folder that moved is built from where it is now', () => {
  renameSync(join(folder, 'content'), join(folder, 'moved'));
  const { status, output } = astroBuild(join(folder, 'dist'), join(folder, 'moved'));
  expect(output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(status).toBe(0);
});
