import { expect, test } from 'vitest';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { trait } from '../../src/charts/trait.ts';
import { inventHeights } from './invented.ts';
import { outline } from './outline.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const heights = inventHeights(
  [
    ['Packet', 38],
    ['Jar', 46],
  ],
  2,
  3,
);
const draw = ({ trial, analysis, result } = heights) => trait(trial, analysis, result, 'leek', words);

test('says the finding, what is drawn, and the values', () => {
  const { kind, title, subtitle, description, table } = draw();
  expect({ kind, title, subtitle, description, table }).toMatchInlineSnapshot(`
    {
      "description": "Dot chart of height, day 21. Packet: 40 mm; 2 trays: 40 mm and 40 mm. Jar: 45 mm; 2 trays: 43 mm and 47 mm.",
      "kind": "trait",
      "subtitle": "Small dots: plants. Large marks: mean of a tray. Day 21.",
      "table": {
        "head": [
          "Treatment",
          "Unit",
          "Plants measured",
          "Mean",
          "95 % interval",
        ],
        "names": 2,
        "rows": [
          [
            "Packet",
            "leek-t0-1",
            "42; 30; 48",
            "40 mm",
            "",
          ],
          [
            "Packet",
            "leek-t0-2",
            "43; 40; 37",
            "40 mm",
            "",
          ],
          [
            "Packet",
            "Together",
            "6",
            "40 mm",
            "36 mm to 44 mm",
          ],
          [
            "Jar",
            "leek-t1-1",
            "46; 38; 45",
            "43 mm",
            "",
          ],
          [
            "Jar",
            "leek-t1-2",
            "45; 47; 49",
            "47 mm",
            "",
          ],
          [
            "Jar",
            "Together",
            "6",
            "45 mm",
            "41 mm to 49 mm",
          ],
        ],
      },
      "title": "Jar: +5.0 (−0.2 to +10.2)",
    }
  `);
});

test('every plant measured on the day is a dot, every unit a mean, every group an estimate', async () => {
  const { drawn } = readSvg(await renderSvg(draw().spec, 'x'));
  const count = (name: string) => drawn.filter(({ layer }) => layer === name).length;
  expect([count('plants'), count('means'), count('estimates')]).toEqual([12, 4, 2]);
  expect(outline(draw())).toMatchSnapshot();
});

test('plants of another day, of a left-out sowing, or not measured are not drawn', () => {
  const { trial, result } = heights;
  const [one, two, ...others] = trial.measurements;
  const measurements = [
    ...(one ? [{ ...one, day: 14 }] : []),
    ...(two ? [{ ...two, values: { height: null } }] : []),
    ...others,
  ];
  const values = result.values.filter(({ unit }) => unit !== 'leek-t1-2');
  const chart = draw({ ...heights, trial: { ...trial, measurements }, result: { ...result, values } });
  expect(chart.spec.datasets?.['plants']).toHaveLength(12 - 2 - 3);
});

test('a measurement of the whole tray is a mean without plants', () => {
  const measurements = heights.trial.measurements
    .filter(({ plant }) => plant === '1')
    .map((row) => ({ ...row, plant: null }));
  const chart = draw({ ...heights, trial: { ...heights.trial, measurements } });
  expect(chart.spec.datasets?.['plants']).toEqual([]);
  expect(chart.spec.datasets?.['means']).toHaveLength(4);
  expect(chart.subtitle).toBe('One dot for each tray, day 21.');
});

test('an interval that two units made very wide does not press the plants flat', () => {
  const { result } = heights;
  const groups = result.groups.map((group) => ({
    ...group,
    interval: { level: 0.95, lower: -900, upper: 980, method: 'welch' as const },
  }));
  const chart = draw({ ...heights, result: { ...result, groups } });
  const [low, high] = (chart.spec.params ?? []).map((param) => ('value' in param ? Number(param.value) : NaN));
  expect((high ?? NaN) - (low ?? NaN)).toBeLessThan(150);
  expect(chart.spec.datasets?.['arrows']).toHaveLength(4);
  expect(chart.subtitle).toContain('Arrow: goes on beyond the picture.');
});
