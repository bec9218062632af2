import { expect, test } from 'vitest';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { survival } from '../../src/charts/survival.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { inventSeries } from './invented-series.ts';
import { readSvg } from './read-svg.ts';

const words = wordsFor('en');
const made = inventSeries({ Shed: -0.5, Jar: -0.1 }, [0, 1, 2, 3, 5]);
const chart = survival(made.trial, made.analysis, made.result, 'leek', words);

test('the title says when half still came up, or that it has not come to that', () => {
  expect(chart.title).toMatchInlineSnapshot(
    `"Shed: half still came up after 2.7 years (2.5 to 3.1); Jar: not yet down to half"`,
  );
});

test('the table has a row a test, with the range and the line', () => {
  expect(chart.table.rows.slice(0, 6).map((row) => row.join(' | '))).toMatchInlineSnapshot(`
    [
      "Shed | 0 years | 2 batches | 91 of 100 | 91 % | 83 % to 96 % | 91 %",
      "Shed | 1 year | 2 batches | 81 of 100 | 81 % | 71 % to 88 % | 81 %",
      "Shed | 2 years | 2 batches | 65 of 100 | 65 % | 54 % to 75 % | 65 %",
      "Shed | 3 years | 2 batches | 45 of 100 | 45 % | 35 % to 56 % | 45 %",
      "Shed | 5 years | 2 batches | 13 of 100 | 13 % | 7 % to 22 % | 13 %",
      "Jar | 0 years | 2 batches | 91 of 100 | 91 % | 83 % to 96 % | 91 %",
    ]
  `);
});

test('a mark and a range a test, dashed lines that end at the first and the last test', async () => {
  const { drawn } = readSvg(await renderSvg(chart.spec, 'figure'));
  const of = (layer: string) => drawn.filter((shape) => shape.layer === layer);
  expect(of('tests')).toHaveLength(10);
  expect(of('ranges')).toHaveLength(10);
  expect(of('lines').map(({ attributes }) => attributes['stroke-dasharray'])).toEqual(['4,4', '7,3']);
  const { datasets } = chart.spec as unknown as { datasets: Record<string, readonly { x: number }[]> };
  const [ticks = [], lines = []] = [datasets['ticks'], datasets['lines']];
  const ends = (rows: readonly { x: number }[]) => [Math.min(...rows.map(({ x }) => x)), Math.max(...rows.map(({ x }) => x))]; // prettier-ignore
  expect(ends(lines)).toEqual(ends(ticks));
});

test('without a line only the tests are drawn', () => {
  const two = inventSeries({ Shed: -0.5, Jar: -0.1 }, [0, 1]);
  const { spec, title, table } = survival(two.trial, two.analysis, two.result, 'leek', words);
  expect((spec as unknown as { datasets: { lines: unknown[] } }).datasets.lines).toEqual([]);
  expect(title).toBe('Shed: no half-life; Jar: no half-life');
  expect(table.rows[0]?.at(-1)).toBe('none');
});
