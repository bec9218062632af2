import { expect, test } from 'vitest';
import type { Comparison } from '../../src/analysis/analysis.ts';
import { differences } from '../../src/charts/differences.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { invent, inventHeights } from './invented.ts';
import { WIDE } from '../../src/charts/row-layout.ts';
import { outline } from './outline.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const three = invent({
  treatments: [
    ['Dry', 0.5],
    ['Soaked 6 h', 0.6],
    ['Soaked 12 h', 0.9],
  ],
  matters: 10,
});
const draw = (invented: Pick<typeof three, 'trial' | 'analysis' | 'result'> = three, result = invented.result) =>
  differences(invented.trial, invented.analysis, result, words);
const changed = (parts: Partial<Comparison>) => ({
  ...three.result,
  comparisons: three.result.comparisons.map((comparison, index) =>
    index === 0 ? { ...comparison, ...parts } : comparison,
  ),
});
const rows = (chart: ReturnType<typeof draw>, name: string) => chart.spec.datasets?.[name] as Record<string, unknown>[];

test('says the findings, what is drawn, and the values', () => {
  const { kind, title, subtitle, description, table } = draw();
  expect({ kind, title, subtitle, description, table }).toMatchInlineSnapshot(`
    {
      "description": "Differences from the control with what the data fit with. Soaked 6 h against Dry: different; +12.7 per 100; +2.3 to +23.1. Soaked 12 h against Dry: different; +42.3 per 100; +31.9 to +52.7.",
      "kind": "differences",
      "subtitle": "Mark: the difference from Dry. Line: what the data fit with (95 % interval). Pale strip: too small to matter.",
      "table": {
        "head": [
          "Outcome",
          "Comparison",
          "Difference",
          "95 % interval",
          "Finding",
        ],
        "rows": [
          [
            "Came up by day 14",
            "Soaked 6 h against Dry",
            "+12.7 per 100",
            "+2.3 to +23.1",
            "different",
          ],
          [
            "Came up by day 14",
            "Soaked 12 h against Dry",
            "+42.3 per 100",
            "+31.9 to +52.7",
            "different",
          ],
        ],
      },
      "title": "Soaked 6 h: +12.7 (+2.3 to +23.1); Soaked 12 h: +42.3 (+31.9 to +52.7)",
    }
  `);
});

test('draws the numbers of the analysis and computes none', () => {
  const { comparisons } = three.result;
  expect(rows(draw(), 'estimates').map(({ at }) => at)).toEqual(comparisons.map(({ estimate }) => estimate));
  expect(rows(draw(), 'intervals').map(({ lower, upper }) => [lower, upper])).toEqual(
    comparisons.map(({ interval }) => [interval?.lower, interval?.upper]),
  );
  expect(outline(draw())).toMatchSnapshot();
});

test('the strip is as wide as the margin, and absent without one', () => {
  expect(rows(draw(), 'strips').map(({ lower, upper }) => [lower, upper])).toEqual([
    [-10, 10],
    [-10, 10],
  ]);
  const none = draw(three, { ...three.result, matters: null });
  expect([rows(none, 'strips'), rows(none, 'above')]).toEqual([[], []]);
  expect(none.subtitle).not.toContain('too small');
});

test('a margin that was not set beforehand is said to be so', () => {
  const equivalence = three.result.comparisons[0]?.equivalence;
  const unfixed = draw(
    three,
    changed({ equivalence: equivalence ? { ...equivalence, fixedBeforehand: false } : null }),
  );
  expect(
    rows(unfixed, 'above')
      .map(({ text }) => text)
      .join(' '),
  ).toBe('too small to matter (not set beforehand)');
});

test('with one tray of each the interval is dashed, the mark open, and the reader told why', () => {
  const one = invent({
    treatments: [
      ['Dry', 0.5],
      ['Soaked', 0.6],
    ],
    trays: 1,
  });
  expect(rows(draw(one), 'intervals')).toMatchObject([{ dash: [4, 3] }]);
  expect(rows(draw(one), 'estimates')).toMatchObject([{ fill: 'var(--paper, none)' }]);
  expect(draw(one).subtitle).toContain('seed-to-seed luck only');
});

test('an interval far wider than the others ends in arrows, which are explained', () => {
  const interval = { level: 0.95, lower: -400, upper: 420, method: 'welch' } as const;
  const far = draw(three, changed({ interval }));
  expect(rows(far, 'arrows').map(({ shape }) => shape)).toEqual(['triangle-left', 'triangle-right']);
  expect(far.subtitle).toContain('Arrow: goes on beyond the picture.');
  expect(far.table.rows[0]?.[3]).toBe('−400.0 to +420.0');
});

test('where checks were too far apart, the line has no mark and no number of days is said', () => {
  const interval = { level: 0.95, lower: -1, upper: 9, method: 'welch-bracket' } as const;
  const coarse = draw(three, { ...changed({ interval }), measure: 't50', unit: 'days' });
  expect([rows(coarse, 'intervals').length, rows(coarse, 'estimates').length]).toEqual([2, 1]);
  expect(coarse.table.rows[0]?.[2]).toBe('not known');
  expect(coarse.subtitle).toContain('too far apart to say by how long');
});

test('every row carries its verdict, so that no number stands without what limits it', () => {
  const cannotTell = draw(three, changed({ verdict: 'untestable' }));
  expect(rows(cannotTell, 'notes').map(({ text }) => text)).toEqual(
    expect.arrayContaining(['untestable', 'different']),
  );
});

test('no estimate and no interval leave the row, with its words, without a mark', () => {
  const empty = draw(three, changed({ estimate: null, interval: null }));
  expect(rows(empty, 'estimates')).toHaveLength(1);
  expect(rows(empty, 'labels')).toHaveLength(2);
  expect(empty.table.rows).toHaveLength(2);
});

test('several lots name their lot, and all together how many they are', () => {
  const lots = invent({
    treatments: [
      ['Dry', 0.5],
      ['Soaked', 0.6],
    ],
    lots: ['leek', 'cress'],
  });
  const [first] = lots.result.comparisons;
  const result = {
    ...lots.result,
    comparisons: [...lots.result.comparisons, ...(first ? [{ ...first, lot: 'all', lots: ['leek', 'cress'] }] : [])],
  };
  const labels = rows(draw(lots, result), 'labels').map(({ text }) => text);
  expect(labels).toEqual(['Leek (leek)', 'Leek (cress)', 'Together: 2 lots']);
  expect(draw(lots, result).subtitle).toMatch(/^Soaked against Dry\. Mark: the difference from Dry\./);
});

test('of several treatments in several lots, a row names the treatment and then its lot', () => {
  const lots = invent({
    treatments: [
      ['Dry', 0.5],
      ['Soaked', 0.6],
      ['Chilled', 0.7],
    ],
    lots: ['leek', 'cress'],
  });
  const chart = draw(lots);
  expect(rows(chart, 'labels').map(({ text }) => text)).toEqual(['Soaked', 'Chilled', 'Soaked', 'Chilled']);
  expect(rows(chart, 'notes').map(({ text }) => text)).toEqual(expect.arrayContaining(['Leek (leek)', 'Leek (cress)']));
  expect(chart.subtitle).not.toContain('against');
});

test('several outcomes of one unit share the axis; of two units none can', () => {
  const early = { ...three.result, outcome: 'early', day: 7 };
  const both = differences(three.trial, three.analysis, [three.result, early], words);
  expect(both.title).toBe('Came up by day 14 and Came up by day 7');
  expect(both.table.rows).toHaveLength(4);
  const { result } = inventHeights([
    ['Dry', 30],
    ['Soaked', 33],
  ]);
  expect(() => differences(three.trial, three.analysis, [three.result, result], words)).toThrow('got % and mm');
});

test.each([
  ['mm', 'lower', 'higher'],
  ['days', 'earlier', 'later'],
])('the axis in %s goes from %s to %s', (unit, less, more) => {
  const measure = unit === 'days' ? 't50' : 'trait';
  const chart = draw(three, { ...three.result, measure, unit });
  expect(rows(chart, 'ways').map(({ text }) => text)).toEqual([less, unit, more]);
});

test('marks stand left of zero where the treatment has less, right of it where more', async () => {
  const { drawn } = readSvg(await renderSvg(draw(three, changed({ estimate: -20 })).spec, 'x'));
  const zero = drawn.find(({ layer }) => layer === 'zero')?.x ?? 0;
  const [first, second] = drawn.filter(({ layer }) => layer === 'estimates');
  expect(first?.x).toBeLessThan(zero);
  expect(second?.x).toBeGreaterThan(zero);
});

test('on paper the notes of a row are one line; a lot that all rows share stands below', async () => {
  const many = invent({
    treatments: [
      ['Dry', 0.5],
      ['Soaked 6 h', 0.6],
      ['Soaked 12 h', 0.9],
    ],
    lots: ['leek', 'onion'],
  });
  const together = many.result.comparisons
    .filter(({ lot }) => lot === 'leek')
    .map((comparison) => ({ ...comparison, lot: 'all', lots: ['leek', 'onion'] }));
  const wide = (comparisons: readonly Comparison[]) =>
    differences(many.trial, many.analysis, { ...many.result, comparisons }, words, WIDE);
  expect(rows(wide(together), 'notes').map(({ text }) => text)).toEqual([
    'different · +12.7 per 100 · +2.3 to +23.1',
    'different · +42.3 per 100 · +31.9 to +52.7',
  ]);
  expect(wide(together).subtitle).toMatch(/^Together: 2 lots\. Mark: /);
  const each = wide(many.result.comparisons);
  expect(each.subtitle).toMatch(/^Mark: /);
  expect(rows(each, 'notes').map(({ text }) => text)).toContainEqual(
    expect.stringMatching(/^.*onion.* · different · /),
  );
  const { drawn, root } = readSvg(await renderSvg(each.spec, 'x'));
  expect(root['width']).toBe('646');
  expect(drawn.length).toBeGreaterThan(10);
});
