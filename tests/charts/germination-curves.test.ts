import { expect, test } from 'vitest';
import { germinationCurves } from '../../src/charts/germination-curves.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { invent } from './invented.ts';
import { WIDE } from '../../src/charts/row-layout.ts';
import { outline } from './outline.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const two = invent({
  treatments: [
    ['Paper packet', 0.6],
    ['Sealed jar', 0.9],
  ],
  trays: 2,
  days: [3, 7.5, 14],
});
const draw = (invented = two, result = invented.result) =>
  germinationCurves(invented.trial, invented.analysis, result, 'leek', words);

test('says the finding as title, what is drawn, and every value of the thick lines', () => {
  const { kind, title, subtitle, description } = draw();
  expect({ kind, title, subtitle, description }).toMatchInlineSnapshot(`
    {
      "description": "Step chart of seeds up, per 100 sown, by day, for Paper packet and Sealed jar. Paper packet: day 3: 2 of 100, day 7.5: 55 of 100, day 14: 58 of 100. Sealed jar: day 3: 2 of 100, day 7.5: 79 of 100, day 14: 88 of 100.",
      "kind": "germination",
      "subtitle": "Thin steps: one tray each. Thick steps: all of a treatment. Marks: days of checking.",
      "title": "Sealed jar: +30.0 (+19.6 to +40.4)",
    }
  `);
});

test('the table holds every count that is drawn, thick lines and thin', () => {
  expect(draw().table).toMatchInlineSnapshot(`
    {
      "head": [
        "Treatment",
        "Sowing",
        "Day 3",
        "Day 7.5",
        "Day 14",
      ],
      "names": 2,
      "rows": [
        [
          "Paper packet",
          "Together",
          "2 of 100",
          "55 of 100",
          "58 of 100",
        ],
        [
          "Paper packet",
          "leek-t0-1",
          "1 of 50",
          "27 of 50",
          "28 of 50",
        ],
        [
          "Paper packet",
          "leek-t0-2",
          "1 of 50",
          "28 of 50",
          "30 of 50",
        ],
        [
          "Sealed jar",
          "Together",
          "2 of 100",
          "79 of 100",
          "88 of 100",
        ],
        [
          "Sealed jar",
          "leek-t1-1",
          "1 of 50",
          "37 of 50",
          "41 of 50",
        ],
        [
          "Sealed jar",
          "leek-t1-2",
          "1 of 50",
          "42 of 50",
          "47 of 50",
        ],
      ],
    }
  `);
});

test('the specification holds numbers of the trial and nothing computed by Vega-Lite', () => {
  const { spec } = draw();
  expect(JSON.stringify(spec)).not.toMatch(/aggregate|errorbar|errorband|bin|regression|loess|density/);
  expect(outline(draw())).toMatchSnapshot();
});

test('the share of a treatment is of all its seeds, not the mean of its trays', () => {
  const { trial, analysis, result } = two;
  const uneven = { ...trial, sowings: trial.sowings.map((s) => (s.id === 'leek-t1-1' ? { ...s, seeds: 150 } : s)) };
  const { spec } = germinationCurves(uneven, analysis, result, 'leek', words);
  const up = trial.counts.filter(({ sowing, day }) => sowing.startsWith('leek-t1') && day === 14);
  const total = up.reduce((sum, { germinated }) => sum + (germinated ?? 0), 0);
  const checks = spec.datasets?.['checks'] as { day: number; colour: string; share: number }[];
  expect(checks.find(({ day, colour }) => day === 14 && colour !== 'currentColor')?.share).toBeCloseTo(
    (100 * total) / 200,
    10,
  );
});

test('marks stand at every check of every treatment, ticks at the days of checking only', async () => {
  const { drawn } = readSvg(await renderSvg(draw().spec, 'x'));
  expect(drawn.filter(({ layer }) => layer === 'checks')).toHaveLength(6);
  const days = drawn
    .filter(({ layer, attributes }) => layer === '' && attributes['text-anchor'] === 'middle')
    .map(({ lines }) => lines[0]);
  expect(days).toEqual(['3', '7.5', '14']);
});

test('nothing up and everything up lie on the two ends of the axis', async () => {
  const ends = invent({
    treatments: [
      ['None', 0],
      ['All', 1],
    ],
    days: [7, 14, 30],
  });
  const { drawn } = readSvg(await renderSvg(draw(ends).spec, 'x'));
  const heights = drawn.filter(({ layer }) => layer === 'checks').map(({ y }) => y);
  expect(Math.max(...heights) - Math.min(...heights)).toBe(230);
  expect(drawn.filter(({ layer }) => layer === 'ends').map(({ lines }) => lines[0])).toEqual(['0', '100']);
});

test('a share is never rounded to none or to all', () => {
  const { trial, result, analysis } = two;
  const nearly = (germinated: number) => ({
    ...trial,
    sowings: trial.sowings.map((sowing) => ({ ...sowing, seeds: 300 })),
    counts: trial.counts.map((count) => ({ ...count, germinated })),
  });
  const ends = (germinated: number) =>
    germinationCurves(nearly(germinated), analysis, result, 'leek', words).spec.datasets?.['ends'];
  expect(ends(299)).toMatchObject([{ text: '99.7' }, { text: '99.7' }]);
  expect(ends(1)).toMatchObject([{ text: '0.3' }, { text: '0.3' }]);
});

test('a sowing left out is dotted, named as such, and counts for no thick line', () => {
  const chart = draw(two, { ...two.result, leftOut: [{ sowing: 'leek-t1-2', reason: 'deviation', what: 'dropped' }] });
  const thin = chart.spec.datasets?.['sowings'] as { line: string; dash: number[] }[];
  expect(new Set(thin.filter(({ line }) => line === 'leek-t1-2').map(({ dash }) => String(dash)))).toEqual(
    new Set(['1.5,2.5']),
  );
  expect(chart.spec.datasets?.['keyLeftOut']).toMatchObject([{ text: ['left out'] }]);
  expect(chart.table.rows.find(([, sowing]) => sowing?.startsWith('leek-t1-2'))?.[1]).toBe('leek-t1-2 (left out)');
  expect(chart.table.rows.find(([label, sowing]) => label === 'Sealed jar' && sowing === 'Together')?.at(-1)).toMatch(
    / of 50$/,
  );
});

test('the day that is compared is marked when counting went on', () => {
  expect(draw().spec.datasets?.['counted']).toEqual([]);
  const early = draw(two, { ...two.result, days: { leek: 7.5 } });
  expect(early.spec.datasets?.['counted']).toEqual([{ day: 7.5 }]);
  expect(early.spec.datasets?.['dayTitle']).toMatchObject([{ text: 'Days since sowing (dotted: day 7.5, compared)' }]);
});

test('one sowing of each is said, and drawn as one line', () => {
  const one = invent({
    treatments: [
      ['Packet', 0.6],
      ['Jar', 0.9],
    ],
    trays: 1,
  });
  expect(draw(one).subtitle).toBe('Steps: the one tray of each treatment. Marks: days of checking.');
});

test('more than six treatments get a plot each with the control in it', async () => {
  const seven = invent({
    treatments: ['Dry', 'A', 'B', 'C', 'D', 'E', 'F'].map((label, i) => [label, 0.3 + i / 10]),
    trays: 2,
  });
  const { drawn } = readSvg(await renderSvg(draw(seven).spec, 'x'));
  expect(drawn.filter(({ layer }) => layer === 'titles').map(({ lines }) => lines[0])).toEqual([
    'A',
    'B',
    'C',
    'D',
    'E',
    'F',
  ]);
  expect(
    drawn.filter(({ layer, attributes }) => layer === 'checks' && attributes['stroke'] === 'currentColor'),
  ).toHaveLength(6 * 6);
});

test('on paper four small plots stand abreast, and as low as their titles allow', async () => {
  const plots = (labels: readonly string[]) =>
    invent({ treatments: labels.map((label, i) => [label, 0.3 + i / 20]), trays: 2 });
  const wide = ({ trial, analysis, result }: typeof two) =>
    germinationCurves(trial, analysis, result, 'leek', words, null, WIDE).spec;
  const nine = plots(['Dry', 'A', 'B', 'C', 'D', 'E', 'F', 'G', 'H']);
  const titles = wide(nine).datasets?.['titles'] as { readonly x: number; readonly y: number }[];
  expect(new Set(titles.map(({ x }) => x)).size).toBe(4);
  expect(new Set(titles.map(({ y }) => y)).size).toBe(2);
  const long = plots(['Dry', 'A', 'B', 'C', 'D', 'E', 'F', 'G', 'Soaked overnight in rain water and dried']);
  const heightOf = async (spec: ReturnType<typeof wide>) => Number(readSvg(await renderSvg(spec, 'x')).root['height']);
  expect(await heightOf(wide(nine))).toBe((await heightOf(wide(long))) - 2 * 17);
});
