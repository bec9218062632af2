import { compile } from '@mdx-js/mdx';
import { expect, test } from 'vitest';
import { proseGuard } from '../../src/files/prose-guard.ts';
import { proseHtml } from '../support/prose-html.ts';

/** What the guard says about a report.mdx, read by the compiler that the site uses; null where it lets the text pass. */
async function refusal(text: string): Promise<string | null> {
  try {
    await compile({ value: text, path: 'content/trials/leek/report.mdx' }, { remarkPlugins: [proseGuard] });
    return null;
  } catch (error) {
    return (error as Error).message;
  }
}

test.each([
  [
    'plain Markdown',
    '# Leeks\n\nThey *came up*, see [the plan](https://example.org/plan) or [write](mailto:a@b.example).',
  ],
  [
    'components with literals',
    '<InShort/>\n\n<Result outcome="germination" lot="leek"/>\n\nUp by <Num of="difference" digits={1} />.',
  ],
  ['a number, a text and a comment in braces', '{14} seeds, {"jar"}, {/* remember the photo */}'],
  ['plain elements', 'H<sub>2</sub>O, <abbr title="Time">T</abbr>'],
  ['an own picture', '![Trays on day 5](photos/day-5.jpg)'],
])('lets %s pass', async (_, text) => {
  expect(await refusal(text)).toBeNull();
});

test.each([
  ['an import', 'import fs from "node:fs"', 'found an import or export'],
  ['an export', 'export const a = 1', 'found an import or export'],
  ['a worked-out value', '{2 + 3}', 'found the expression {"2 + 3"}'],
  ['a call', 'Hello {fetch("https://example.org")}', 'found the expression'],
  ['a template with a hole', '{`${1}`}', 'found the expression'],
  ['an arrow in an attribute', '<Num of={() => 1} />', 'found the expression'],
  ['a spread', '<Num {...{ a: 1 }} />', 'found the expression'],
  ['a script', '<script src="https://example.org/x.js"></script>', 'found <script>'],
  ['a frame', '<iframe src="https://example.org"></iframe>', 'found <iframe>'],
  ['a style', '<style>{"p { color: red }"}</style>', 'found <style>'],
  ['an SVG', '<svg><a href="javascript:alert(1)">x</a></svg>', 'found <svg>'],
  ['an event handler', '<b onclick="alert(1)">x</b>', 'found the attribute onclick'],
  ['a style attribute', '<b style="color: red">x</b>', 'found the attribute style'],
  ['a directive', '<Num client:load />', 'found the attribute client:load'],
  ['raw HTML through a directive', '<b set:html="<i>x</i>">x</b>', 'found the attribute set:html'],
  ['a javascript: link', '[x](javascript:alert(1))', 'found a link to "javascript:alert(1)"'],
  ['a javascript: link in an element', '<a href="JavaScript:alert(1)">x</a>', 'found a link to'],
  ['a data: link by reference', '[x][y]\n\n[y]: data:text/html,x', 'found a link to'],
  ['a picture from elsewhere', '![x](https://example.org/x.png)', 'found a picture at'],
  ['a picture of another trial', '![x](photos/../../other/photos/x.jpg)', 'found a picture at'],
  ['an unknown component', '<InShrt/>', 'Did you mean "InShort"?'],
])('refuses %s', async (_, text, message) => {
  expect(await refusal(text)).toContain(message);
});

test('names every place at once, as the author knows it', async () => {
  expect(await refusal('Fine.\n\n{1 + 1}\n\n<script></script>\n')).toMatchInlineSnapshot(`
    "content/trials/leek/report.mdx:3:1: found the expression {"1 + 1"}; only plain values may stand in braces, such as {14} or {"jar"}
      error: Write the words or the number itself.
    content/trials/leek/report.mdx:5:1: found <script>, which a report may not hold
      error: Write it in Markdown, or use a component."
  `);
});

test('refuses raw HTML in report.md, but not a comment', async () => {
  await expect(proseHtml('Text <b onclick="x()">bold</b>', proseGuard)).rejects.toThrow('found raw HTML: "<b onclick');
  expect(await proseHtml('Text <!-- a note to myself -->', proseGuard)).not.toContain('note');
});
