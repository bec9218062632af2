import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, inject, test } from 'vitest';

const site = inject('site');
const fileOf = (path: string) => join(site.folder, path === '' || path.endsWith('/') ? `${path}index.html` : path);
const html = (path: string) => readFileSync(fileOf(path), 'utf8');
const all = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map(([, found = '']) => found);

/** Pages that carry a script of their own; all others carry none. */
const WITH_SCRIPT: readonly RegExp[] = [
  /^trials\/$/,
  /^trials\/[^/]+\/recheck\/$/,
  /^search\/$/,
  /^plan\/$/,
  /^record\/$/,
];

const validator = new HtmlValidate({
  extends: ['html-validate:recommended', 'html-validate:a11y'],
  rules: {
    'long-title': 'off',
    'no-trailing-whitespace': 'off',
    'void-style': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'doctype-style': 'off',
    // Lists and regions carry their roles on purpose.
    'prefer-native-element': 'off',
    'no-redundant-role': 'off',
    // Headings of a grower's text and of charts are unique in their place, not on the page.
    'unique-landmark': 'error',
    'svg-focusable': 'off',
    // Cells and rows end where the next begins, as HTML allows: a report has thousands.
    'no-implicit-close': 'off',
  },
});

describe.each(site.pages)('/%s', (path) => {
  const text = html(path);

  test('carries no script, no inline style and nothing from another host', () => {
    const program = text.replace(/<script type="application\/ld\+json">[^<]*<\/script>/g, ''); // data, which nothing runs
    if (!WITH_SCRIPT.some((page) => page.test(path))) expect(program).not.toMatch(/<script/i);
    expect(program).not.toMatch(/<style|<iframe|\son\w+=|\sstyle="|javascript:/i);
    const loaded = all(
      text,
      /<(?:link rel="(?:stylesheet|icon|preload)"[^>]*?href|img[^>]*?src|source[^>]*?srcset)="([^"]*)"/g,
    );
    for (const address of loaded) expect(address).toMatch(new RegExp(`^${site.base}`));
  });

  test('states a strict policy before anything is loaded', () => {
    const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(text)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("base-uri 'none'");
    const allowed = path === 'search/' ? policy.replace("'wasm-unsafe-eval'", '') : policy;
    expect(allowed).not.toMatch(/unsafe|https?:|data:|\*/);
    expect(text.indexOf('content-security-policy')).toBeLessThan(text.indexOf('rel="stylesheet"'));
  });

  test('has a language, one heading of its own, a title, a description and an address', () => {
    expect(text).toMatch(/^<!DOCTYPE html><html lang="[a-z]{2}(-[A-Z]{2})?"/i);
    expect(all(text, /<h1[^>]*>([^]*?)<\/h1>/g)).toHaveLength(1);
    expect(all(text, /<title>([^<]+)<\/title>/g)).toHaveLength(1);
    expect(/<meta name="description" content="([^"]+)"/.exec(text)?.[1]?.length).toBeGreaterThan(10);
    expect(/<link rel="canonical" href="(https?:\/\/[^"]+)"/.exec(text)?.[1]).toContain(
      path === '404.html' ? '404' : path,
    );
  });

  test('is valid HTML', async () => {
    const report = await validator.validateString(text);
    const found = report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`),
    );
    expect(found).toEqual([]);
  });

  test('names the layers of its styles in their order', () => {
    const styles = all(text, /<link rel="stylesheet" href="([^"]*)"/g).map((href) =>
      html(href.slice(site.base.length)),
    );
    const named = all(styles.join(''), /@layer ([\w,]+)/g).flatMap((names) => names.split(','));
    expect([...new Set(named)]).toEqual(['tokens', 'base', 'layout', 'components', 'print']);
  });

  test('gives every table a caption and every heading in it a scope', () => {
    for (const table of all(text, /<table[^>]*>([^]*?)<\/table>/g)) {
      expect(table).toMatch(/^<caption[^>]*>[^]*?<\/caption>/);
      for (const heading of all(table, /<th\b([^>]*)>/g)) expect(heading).toMatch(/ scope="(col|row)"/);
    }
  });

  test('repeats no id', () => {
    const ids = all(text, /\sid="([^"]*)"/g);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('weighs at most 150 kB, styles and charts included', () => {
    const styles = all(text, /<link rel="stylesheet" href="([^"]*)"/g).map((href) => href.slice(site.base.length));
    const bytes = [fileOf(path), ...styles.map(fileOf)].reduce((sum, file) => sum + statSync(file).size, 0);
    expect(bytes).toBeLessThanOrEqual(150_000);
  });

  test('links to nothing that is not there', () => {
    for (const link of all(text, /<a [^>]*?href="([^"]*)"/g)) {
      if (/^(https?:|mailto:)/.test(link)) continue;
      const { pathname, hash } = new URL(link.replaceAll('&amp;', '&'), `http://site${site.base}${path}`);
      expect(pathname.startsWith(site.base), `${link} stays on the site`).toBe(true);
      const to = pathname.slice(site.base.length);
      expect(existsSync(fileOf(to)), `${link} leads somewhere`).toBe(true);
      const fragment = decodeURIComponent(hash.slice(1));
      if (fragment) expect(all(html(to), /\sid="([^"]*)"/g), link).toContain(fragment);
    }
  });
});

test('shows no date of the day on which it was built', () => {
  const today = new Date();
  const written = [
    today.toISOString().slice(0, 10),
    today.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
  ];
  for (const page of site.pages) for (const date of written) expect(html(page)).not.toContain(date);
});

test('nothing moves: no style starts an animation or a transition', () => {
  const styles = new Set(site.pages.flatMap((page) => all(html(page), /<link rel="stylesheet" href="([^"]*)"/g)));
  for (const style of styles)
    expect(html(style.slice(site.base.length))).not.toMatch(/animation|transition|@keyframes/);
});
