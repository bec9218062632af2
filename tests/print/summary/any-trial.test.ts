import { describe, expect, test } from 'vitest';
import { summaryPdf } from '../../../src/print/summary/summary-pdf.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { invent, type Invention } from '../../charts/invented.ts';
import { makeOutcome } from '../../support/make-trial.ts';
import { readPdf } from '../../support/read-pdf.ts';

const words = wordsFor('en');
const site = { ...DEFAULT_SITE, name: 'Seed Bench', base: 'https://example.org', licence: 'CC-BY-4.0' };

async function summaryOf(invention: Invention, paper: 'a4' | 'letter' = 'letter', said = words) {
  const { trial } = invent({ trays: 4, ...invention });
  const analysis = publishedAnalysis(trial, said);
  const address = `https://example.org/trials/${trial.id}/`;
  const pdf = await summaryPdf({ trial, analysis, site: { ...site, paper }, words: said, address });
  return { trial, analysis, ...(await readPdf(pdf.bytes)), bytes: Buffer.from(pdf.bytes).toString('latin1') };
}

const LONG = 'soaked overnight in rain water at 20 °C and then rinsed and dried twice';

/** Three outcomes, the last a leaf measured on five plants of each sowing. */
function manyOutcomes(treatments: Invention['treatments'], lots: readonly string[]): Invention {
  const { trial } = invent({ treatments, lots, trays: 4 });
  return {
    treatments,
    lots,
    parts: {
      outcomes: [
        makeOutcome({ matters: 10 }),
        makeOutcome({ id: 'speed', measure: 't50', day: null, matters: 1, primary: false }),
        makeOutcome({ id: 'leaf', measure: 'trait', column: 'leaf_length', primary: false }),
      ],
      traits: [{ column: 'leaf_length', unit: 'mm' }],
      measurements: trial.sowings.flatMap(({ id }, at) =>
        [1, 2, 3, 4, 5].map((plant) => ({
          sowing: id,
          day: 14,
          plant: String(plant),
          values: { leaf_length: 30 + ((at * 7 + plant * 5) % 13) },
          line: 2,
        })),
      ),
    },
  };
}

const named = (count: number): Invention['treatments'] =>
  Array.from({ length: count }, (_, index) => [`Way ${index + 1}`, 0.5 + index * 0.035]);

test.each([1, 2, 3, 4, 5, 6])('%d treatments take two pages', async (count) => {
  const { pages, text } = await summaryOf({ treatments: named(count) });
  expect(pages).toHaveLength(2);
  for (const [label] of named(count)) expect(text).toContain(`${label} 4 trays`);
});

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  test.each([7, 9, 12])('%d treatments take two pages and lose none of their numbers', async (count) => {
    const { trial, analysis, pages, text, alternatives } = await summaryOf({ treatments: named(count) }, paper);
    expect(pages).toHaveLength(2);
    const [result] = analysis.results;
    for (const [label] of named(count)) expect(text).toContain(`${label} 4 trays`);
    for (const comparison of result!.comparisons) {
      expect(text).toContain(words.difference(comparison.estimate, result!));
      const { lower, upper } = comparison.interval!;
      expect(text).toContain(words.range(lower!, upper!, 'germination', comparison.unit));
      if (count > 7) expect(text).not.toContain(words.comparisonName(trial, result!.comparisons.at(-1)!));
    }
    expect(alternatives).toHaveLength(3); // differences, curves, QR code
    expect(text).not.toContain('There was no room here');
  });

  test('12 long labels take two pages; the curves stand in the report, and it says so', async () => {
    const treatments = named(12).map(([label, share]): [string, number] => [`${label} ${LONG}`, share]);
    const { pages, text, alternatives } = await summaryOf({ treatments }, paper);
    expect(pages).toHaveLength(2);
    for (const [label] of treatments) expect(text).toContain(label);
    expect(text.replaceAll(' ', '')).toContain('4trays180of200'); // the last row
    expect(alternatives).toHaveLength(2); // differences, QR code
    expect(alternatives[0]).toContain(`Way 12 ${LONG}`);
    expect(text).toContain('There was no room here for further charts: see the full report, https://example.org/trials/test/'); // prettier-ignore
  });

  test('12 treatments of 3 lots with 3 outcomes take two pages, lots together first, and say what is left out', async () => {
    const { pages, text, analysis } = await summaryOf(manyOutcomes(named(12), ['leek', 'onion', 'chard']), paper);
    expect(pages).toHaveLength(2);
    expect(analysis.results).toHaveLength(3);
    expect(text).toContain('Came up by day 14, lots together Treatment Difference from the control');
    for (const [label] of named(12)) expect(text).toContain(label);
    expect(text).toMatch(/comparisons more: see “The numbers” and the full report\./);
    expect(text).toMatch(/There was no room here for \d+ more rows of numbers, the numbers of the other outcomes and further charts: see the full report/); // prettier-ignore
    expect(text).toMatch(/Leaf length on day 14\. \d+ of \d+: not settled/);
  });

  test('3 treatments of 8 lots keep all their numbers', async () => {
    const lots = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
    const { pages, text } = await summaryOf({ treatments: named(3), lots }, paper);
    expect(pages).toHaveLength(2);
    for (const lot of lots) expect(text).toContain(`Leek (${lot}) Way 3 4 trays`);
    expect(text).toContain('4 trays of each of 3 treatments in each of 8 lots');
    expect(text).toContain('4 sowings of 50 seeds for each of 3 treatments in each of 8 lots');
  });
});

test('the longest labels of the most lots still take two pages, in German too', async () => {
  const treatments = named(12).map(([label, share]): [string, number] => [`${label} ${LONG}`, share]);
  for (const language of ['en', 'de']) {
    const invention = manyOutcomes(treatments, ['leek', 'onion', 'chard']);
    const { pages, text } = await summaryOf(invention, 'letter', wordsFor(language));
    expect(pages).toHaveLength(2);
    for (const [label] of treatments) expect(text).toContain(label);
  }
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
