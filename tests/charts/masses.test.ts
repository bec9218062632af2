import { expect, test } from 'vitest';
import type { Chart } from '../../src/charts/chart.ts';
import { masses } from '../../src/charts/masses.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { inventWeighings } from './invented.ts';
import { outline } from './outline.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const weighed = inventWeighings();

test('says what was left, what is drawn, and the grams', () => {
  const chart = masses(weighed.trial, weighed.analysis, words);
  expect({ ...chart, spec: null }).toMatchInlineSnapshot(`
    {
      "description": "Seed mass before and after the treatment. Dried in a jar, Leek, Batch a: 20 g before, 19.2 g after. Dried in a jar, Leek, Batch b: 20.3 g before, 19.4 g after. Dried in a jar, Leek, Batch c: 19.8 g before, 19.1 g after. Soaked overnight, Leek, Batch d: 5 g before, 6.4 g after. Soaked overnight, Leek, Batch e: 5.2 g before, 6.9 g after.",
      "kind": "masses",
      "spec": null,
      "subtitle": "One line for each batch weighed, from before to after. Thick: what the steps of the scale allow, where known.",
      "table": {
        "head": [
          "Lot",
          "Treatment",
          "Batch",
          "Repeat",
          "Mass before (g)",
          "Mass after (g)",
          "Mass after, % of the mass before",
          "What the scale’s steps allow",
        ],
        "rows": [
          [
            "Leek",
            "Dried in a jar",
            "a",
            "",
            "20",
            "19.2",
            "96.0",
            "95.5 to 96.5",
          ],
          [
            "Leek",
            "Dried in a jar",
            "b",
            "",
            "20.3",
            "19.4",
            "95.6",
            "95.1 to 96.1",
          ],
          [
            "Leek",
            "Dried in a jar",
            "c",
            "",
            "19.8",
            "19.1",
            "96.5",
            "96.0 to 97.0",
          ],
          [
            "Leek",
            "Soaked overnight",
            "d",
            "",
            "5",
            "6.4",
            "128.0",
            "not known",
          ],
          [
            "Leek",
            "Soaked overnight",
            "e",
            "",
            "5.2",
            "6.9",
            "132.7",
            "not known",
          ],
        ],
      },
      "title": "Dried in a jar: 95.6 % to 96.5 % of the mass before; Soaked overnight: 128.0 % to 132.7 % of the mass before",
    }
  `);
});

test('a line for each batch from before to after, a bar where the scale’s step is known', async () => {
  const chart = masses(weighed.trial, weighed.analysis, words);
  const { drawn } = readSvg(await renderSvg(chart?.spec as never, 'x'));
  const count = (name: string) => drawn.filter(({ layer }) => layer === name).length;
  expect([count('ways'), count('after'), count('ranges')]).toEqual([5, 5, 3]);
  expect(outline(chart as Chart)).toMatchSnapshot();
});

test('the container does not count as seed', () => {
  const weighings = weighed.trial.weighings.map((row) => ({ ...row, mass: row.mass + 100, container: 100 }));
  const chart = masses({ ...weighed.trial, weighings }, weighed.analysis, words);
  expect(chart?.table.rows[0]?.slice(4, 6)).toEqual(['20', '19.2']);
});

test('nothing weighed twice, no chart', () => {
  expect(masses({ ...weighed.trial, weighings: [] }, weighed.analysis, words)).toBeNull();
  const before = weighed.trial.weighings.filter(({ stage }) => stage === 'before');
  expect(masses({ ...weighed.trial, weighings: before }, weighed.analysis, words)).toBeNull();
});
