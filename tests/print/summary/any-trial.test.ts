import { expect, test } from 'vitest';
import { summaryPdf } from '../../../src/print/summary/summary-pdf.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { invent, type Invention } from '../../charts/invented.ts';
import { readPdf } from '../../support/read-pdf.ts';

const words = wordsFor('en');
const site = { ...DEFAULT_SITE, name: 'Seed Bench', base: 'https://example.org', licence: 'CC-BY-4.0' };

async function summaryOf(invention: Invention, paper: 'a4' | 'letter' = 'letter') {
  const { trial } = invent({ trays: 4, ...invention });
  return summaryOfTrial(trial, paper);
}

async function summaryOfTrial(trial: Trial, paper: 'a4' | 'letter' = 'letter') {
  const analysis = publishedAnalysis(trial, words);
  const address = `https://example.org/trials/${trial.id}/`;
  const pdf = await summaryPdf({ trial, analysis, site: { ...site, paper }, words, address });
  return { trial, ...(await readPdf(pdf.bytes)), bytes: Buffer.from(pdf.bytes).toString('latin1') };
}

const named = (count: number): Invention['treatments'] =>
  Array.from({ length: count }, (_, index) => [`Way ${index + 1}`, 0.5 + index * 0.035]);

test.each([1, 2, 3, 4, 5, 6])('%d treatments take two pages', async (count) => {
  const { pages, text } = await summaryOf({ treatments: named(count) });
  expect(pages).toHaveLength(2);
  for (const [label] of named(count)) expect(text).toContain(`${label} 4 trays`);
});

test.each([7, 12])('%d treatments lose none of their numbers', async (count) => {
  const { pages, text } = await summaryOf({ treatments: named(count) });
  expect(pages.length).toBeLessThanOrEqual(3);
  for (const [label] of named(count)) expect(text).toContain(`${label} 4 trays`);
  for (const [label] of named(count).slice(1)) expect(text).toContain(`${label} against Way 1`);
});

test('200 sowings take two pages', async () => {
  const { trial, pages } = await summaryOf({ treatments: named(4), trays: 50 });
  expect(trial.sowings).toHaveLength(200);
  expect(pages).toHaveLength(2);
});

test('labels are text, whatever they say', async () => {
  const label = '*Bold* #let x = 1 $a$ @cite \\u{1} <b> & "q" _i_ `raw` // ~ -- [x]';
  const { text, pages } = await summaryOf({
    treatments: [
      ['plain', 0.6],
      [label, 0.8],
    ],
    parts: { title: '#panic("x") $x$ @ref \\ <label>', question: '#read("/etc/passwd") ? // no comment' },
  });
  expect(pages).toHaveLength(2);
  expect(text).toContain(`${label} 4 trays`);
  expect(text).toContain('#panic("x") $x$ @ref \\ <label>');
  expect(text).toContain('#read("/etc/passwd") ? // no comment');
});

test('what no face has is written as its number', async () => {
  const { text } = await summaryOf({
    treatments: [
      ['🌱 sown', 0.6],
      ['👩‍🌾 中', 0.8],
    ],
  });
  expect(text).toContain('[U+1F331] sown 4 trays');
  expect(text.replaceAll(' ', '')).toContain('[U+1F469][U+1F33E][U+4E2D]4trays');
});

test('labels written from right to left use our faces, in the charts too', async () => {
  const { bytes } = await summaryOf({
    treatments: [
      ['יבש (ללא השריה)', 0.6],
      ['منقوع في الماء 24', 0.8],
    ],
  });
  const faces = Array.from(bytes.matchAll(/\/BaseFont \/[A-Z]{6}\+([A-Za-z0-9]+)/g), ([, name]) => name);
  expect(faces).toEqual(expect.arrayContaining(['NotoSansHebrew', 'NotoSansArabic'].map((name) => expect.stringContaining(name)))); // prettier-ignore
  for (const face of faces) expect(face).toMatch(/^(SourceSerif4|AtkinsonHyperlegibleNext|NotoSans)/);
});

test('a long label without blanks is cut, not lost', async () => {
  const label = 'x'.repeat(120);
  const { text } = await summaryOf({
    treatments: [
      ['Dry', 0.6],
      [label, 0.8],
    ],
  });
  expect(text.replaceAll(' ', '')).toContain(`${label}4trays`);
});

test.each([
  ['a4', 595, 842],
  ['letter', 612, 792],
] as const)('the paper of the site is %s', async (paper, width, height) => {
  const { bytes } = await summaryOf({ treatments: named(2) }, paper);
  const [, wide, high] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(bytes) ?? [];
  expect([Math.round(Number(wide)), Math.round(Number(high))]).toEqual([width, height]);
});
