import { expect, test } from 'vitest';
import type { Pooled } from '../../src/analysis/pooled.ts';
import { pooledChart } from '../../src/charts/pooled.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { FOUR, pool } from '../support/pooled-trials.ts';
import { outline } from './outline.ts';
import { readSvg } from './read-svg.ts';

const words = wordsFor('en');
const trials = FOUR.map((trial, index) => ({
  ...trial,
  authors: [{ id: `g${index}`, name: `Grower ${index}`, affiliation: null, orcid: null, url: null }],
}));
const four = pool(trials);
const rows = (pooled: Pooled, name: string) => pooledChart(pooled, words).spec.datasets?.[name] as Record<string, unknown>[]; // prettier-ignore

test('says the answer, what is drawn, and every value', () => {
  const { kind, title, subtitle, description, table } = pooledChart(four, words);
  expect({ kind, title, subtitle, description, table }).toMatchInlineSnapshot(`
    {
      "description": "Differences found by each trial. Grower 0: a difference; 14 more per 100; 2 to 25 more per 100. Grower 1: cannot tell; 16 more per 100; 16 fewer to 45 more per 100. Grower 2: a difference; 14 more per 100; 1 to 27 more per 100. Grower 3: cannot tell; 20 more per 100; 11 fewer to 47 more per 100. Together: came up more; 15 more per 100; 7 to 23 more per 100. A next repeat may fall here: 24 fewer to 53 more per 100.",
      "kind": "pooled",
      "subtitle": "One row for each trial; diamond: all together; line without a mark: where a next repeat may fall. Lines: what the data fit with. Pale strip: too small to matter. Dashed, with an open mark: one tray of a kind, so alone it cannot tell.",
      "table": {
        "head": [
          "Trial",
          "By",
          "Difference",
          "95 % interval",
          "Weight",
          "Alone",
        ],
        "rows": [
          [
            "Trial a",
            "Grower 0",
            "14 more per 100",
            "2 to 25 more per 100",
            "49 %",
            "a difference",
          ],
          [
            "Trial b",
            "Grower 1",
            "16 more per 100",
            "16 fewer to 45 more per 100",
            "7 %",
            "cannot tell",
          ],
          [
            "Trial c",
            "Grower 2",
            "14 more per 100",
            "1 to 27 more per 100",
            "37 %",
            "a difference",
          ],
          [
            "Trial d",
            "Grower 3",
            "20 more per 100",
            "11 fewer to 47 more per 100",
            "8 %",
            "cannot tell",
          ],
          [
            "Together",
            "",
            "15 more per 100",
            "7 to 23 more per 100",
            "100 %",
            "came up more",
          ],
          [
            "A next repeat may fall here",
            "",
            "",
            "24 fewer to 53 more per 100",
            "",
            "",
          ],
        ],
      },
      "title": "Sealed jar against Paper packet, 4 trials together: 15 more per 100 (7 to 23 more per 100)",
    }
  `);
});

test('draws the numbers of the analysis and computes none', () => {
  expect(rows(four, 'estimates').map(({ at }) => at)).toEqual([...four.trials.map(({ estimate }) => estimate), four.estimate]); // prettier-ignore
  expect(rows(four, 'intervals').map(({ lower, upper }) => [lower, upper])).toEqual(
    [...four.trials, four.interval, four.nextResult].map((range) => [range?.lower, range?.upper]),
  );
});

test('every trial has a mark of one size and one ink; those with one tray are dashed and open, and stay', () => {
  const { layer = [] } = pooledChart(four, words).spec as { layer?: { name: string; mark: { size?: number } }[] };
  expect(layer.filter(({ name }) => name === 'estimates').map(({ mark }) => mark.size)).toEqual([110]);
  expect(new Set(rows(four, 'estimates').map(({ colour }) => colour))).toEqual(new Set(['currentColor']));
  const open = four.trials.map(({ basis }) => basis === 'half-seeds');
  expect(open).toEqual([false, true, false, true]);
  expect(rows(four, 'estimates').map(({ fill, shape }) => [fill !== 'currentColor', shape])).toEqual([
    ...open.map((each) => [each, 'circle']),
    [false, 'diamond'],
  ]);
  expect(rows(four, 'intervals').map(({ dash }) => JSON.stringify(dash) === '[4,3]')).toEqual([...open, false, false]);
});

test('two trials stand side by side, with neither diamond nor divider', () => {
  const two = pool(trials.slice(0, 2));
  const chart = pooledChart(two, words);
  expect(chart.subtitle).toContain('One row for each trial. Lines');
  expect(rows(two, 'divider')).toEqual([]);
  expect(rows(two, 'estimates')).toHaveLength(2);
  expect(chart.table.rows.map((row) => row[4])).toEqual(['none', 'none']);
});

test('without a smallest difference that matters there is no strip; without trials nothing is drawn', async () => {
  expect(rows(pool(trials, { matters: null }), 'strips')).toEqual([]);
  expect(rows(pool([]), 'estimates')).toEqual([]);
  await renderSvg(pooledChart(pool([]), words).spec, 'none');
});

test('a range that goes on beyond the picture ends in an arrow, and it is said', () => {
  const far = { ...four, nextResult: { lower: -2000, upper: 2000 } };
  expect(pooledChart(far, words).subtitle).toContain('Arrow: goes on beyond the picture.');
  expect(rows(far, 'arrows')).toHaveLength(2);
});

test('the picture holds every name and value', async () => {
  const { drawn } = readSvg(await renderSvg(pooledChart(four, words).spec, 'pooled'));
  const texts = drawn.flatMap(({ lines }) => lines);
  for (const name of ['Grower 0', 'Grower 3', 'Together', 'cannot tell', 'came up more']) expect(texts).toContain(name);
});

test('the specification', () => {
  expect(outline(pooledChart(four, words)).join('\n')).toMatchSnapshot();
});
