import { expect, test } from 'vitest';
import type { Block, PrintDocument } from '../../src/print/document.ts';
import { pagesNeeded } from '../../src/print/pages-needed.ts';
import { pdfOf } from '../../src/print/pdf-of.ts';
import { makeDocument } from '../support/make-document.ts';

const WORDS =
  'six trays of each were sown on the same shelf and turned every morning and whoever counted did not know which was which until the last of all the days on which somebody looked after them and wrote it down'.split(
    ' ',
  );
/** Sentences of many lengths: one that just fills its line, or just does not, would tell of itself alone. */
const said = (at: number): string => `${WORDS.slice(at % 11, (at % 11) + 5 + ((at * 7) % 29)).join(' ')}.`;
const square = '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="40" viewBox="0 0 40 40"></svg>';

const documentOf = (blocks: readonly Block[], parts: Partial<PrintDocument> = {}) =>
  makeDocument(blocks, { pictures: { square }, ...parts });

const table = (at: number): Block => ({
  kind: 'table',
  caption: 'Every tray',
  head: ['Tray', 'What was seen'],
  rows: [
    ['T1', said(at)],
    ['T2', said(at + 4)],
  ],
  widths: [{ mm: 20 }, { share: 1 }],
  figures: [],
  rules: 'lines',
  rowHeight: 0,
});
const figure = (at: number, tallest: number): Block => ({
  kind: 'figure',
  picture: 'square',
  alt: 'A square',
  title: null,
  caption: said(at),
  width: 50,
  tallest,
});
const text = (at: number, style: 'plain' | 'label' | 'strong'): Block => ({ kind: 'text', style, text: said(at) });
const heading = (at: number, level: 2 | 3): Block => ({ kind: 'heading', level, text: WORDS[at % 11] ?? '' });
const finding = (at: number): Block => ({
  kind: 'finding',
  mark: 'square',
  words: 'alike',
  name: null,
  sentence: said(at),
  lead: false,
});
const facts = (at: number): Block => ({
  kind: 'facts',
  facts: [
    { name: 'Seed', values: [said(at)] },
    { name: 'Days', values: [said(at + 3), said(at + 5)] },
  ],
});

test.each<readonly [string, (at: number) => readonly Block[]]>([
  ['text', (at) => [text(at, 'plain')]],
  ['small print', (at) => [text(at, 'strong'), text(at + 1, 'label')]],
  ['headings', (at) => [heading(at, 2), text(at, 'plain'), heading(at, 3), text(at + 1, 'label')]],
  ['findings', (at) => [finding(at)]],
  ['facts', (at) => [facts(at)]],
  ['tables', (at) => [table(at)]],
  ['pictures', (at) => [figure(at, 190)]],
  ['small pictures', (at) => [figure(at, 12)]],
  ['spreads', (at) => [{ kind: 'spread', main: [text(at, 'plain')], beside: [text(at + 1, 'label')] }]],
  ['columns', (at) => [{ kind: 'columns', first: null, columns: [[facts(at)], [table(at)]] }]],
  ['boxes', (at) => [{ kind: 'box', whole: true, blocks: [text(at, 'plain'), table(at)] }]],
])('%s: as many pages as the set document has', (_, blocksOf) => {
  for (const paper of ['a4', 'letter'] as const) {
    const blocks: Block[] = [{ kind: 'title', text: 'Leaves' }];
    // the last page is about half full then, so that an error of a tenth does not show
    for (let at = 0; pagesNeeded(documentOf(blocks, { paper })) < 3.4; at++) blocks.push(...blocksOf(at));
    const document = documentOf(blocks, { paper });
    expect(pagesNeeded(document)).toBeLessThan(3.9);
    expect(pdfOf([document]).pages).toBe(4);
  }
});

test('what is set closer needs less', () => {
  const needed = (['roomy', 'close', 'tight'] as const).map((density) =>
    pagesNeeded(documentOf([text(0, 'plain'), facts(1), table(2), figure(3, 190)], { density })),
  );
  expect(needed).toEqual([...needed].sort((a, b) => b - a));
});

test('a page break ends a page', () => {
  expect(pagesNeeded(documentOf([text(0, 'plain'), { kind: 'page' }, text(0, 'plain')]))).toBeGreaterThan(1);
});

test('of several settings the first that fits is set', () => {
  const long = documentOf(Array.from({ length: 80 }, (_, at) => text(at, 'plain')));
  const shorter = documentOf(Array.from({ length: 20 }, (_, at) => text(at, 'plain')));
  const shortest = documentOf([text(0, 'plain')]);
  expect(pdfOf([long, shorter, shortest], 1).pages).toBe(1);
  expect(pdfOf([long, shorter, shortest], 1).bytes).toEqual(pdfOf([shorter]).bytes);
  expect(pdfOf([long, long], 1).pages).toBeGreaterThan(1);
});
