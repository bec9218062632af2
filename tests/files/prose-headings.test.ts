import { expect, test } from 'vitest';
import { proseHeadings } from '../../src/files/prose-headings.ts';
import { proseHtml } from '../support/prose-html.ts';

async function headings(text: string): Promise<string[]> {
  const html = await proseHtml(text, proseHeadings);
  return [...html.matchAll(/<(h\d) id="([^"]*)">([^<]*)/g)].map(([, tag, id, title]) => `${tag} ${id} ${title}`);
}

test.each([
  ['# A\n## B\n### C\n# D', ['h3 words-1 A', 'h4 words-2 B', 'h5 words-3 C', 'h3 words-4 D']],
  ['## A\n### B\n## C', ['h3 words-1 A', 'h4 words-2 B', 'h3 words-3 C']],
  ['# A\n#### B\n## C', ['h3 words-1 A', 'h4 words-2 B', 'h3 words-3 C']],
])('sets an author’s headings below those of the page, skipping no level: %j', async (text, expected) => {
  expect(await headings(text)).toEqual(expected);
});

test('an author’s heading cannot take an id of the page', async () => {
  expect(await headings('# Results')).toEqual(['h3 words-1 Results']);
});
