import { XMLParser } from 'fast-xml-parser';
import { expect, test } from 'vitest';
import { planAnswer } from '../../src/analysis/planning/plan-answer.ts';
import { planDesign } from '../../src/analysis/planning/plan-design.ts';
import { chanceChart } from '../../src/charts/chance-chart.ts';
import { WIDTH } from '../../src/charts/chart-theme.ts';
import type { DrawnChart } from '../../src/charts/drawn-chart.ts';
import { planRangeChart } from '../../src/charts/plan-range-chart.ts';
import { mark } from '../../src/charts/svg-marks.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

const en = wordsFor('en');
const germination = planDesign({ measure: 'germination', base: 60, matters: 20, units: 4 });
const heights = planDesign({ measure: 'trait', base: 40, matters: 5, units: 30, spread: 3 });

/** Every drawn element with its attributes as numbers where they are some. */
function elements({ svg }: DrawnChart, name: string): Record<string, number | string>[] {
  const read = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: '', parseAttributeValue: true }).parse(
    svg,
  );
  return [read.svg[name]].flat().filter((found) => found !== undefined);
}

test('the chance rises with the trays, from none with one, and the plan stands where it is', () => {
  const answer = planAnswer(germination, { trials: 400 });
  const chart = chanceChart(answer, en);
  const dots = elements(chart, 'circle').map(({ cx, cy }) => [Number(cx), Number(cy)] as const);
  expect(dots).toHaveLength(12);
  expect(dots.map(([, y]) => y)).toEqual(dots.map(([, y]) => y).toSorted((a, b) => b - a));
  const bar = elements(chart, 'line').find((line) => line['stroke-width'] === 2);
  expect(bar?.x1).toBe(dots[3]?.[0]);
  expect(Number(bar?.y1)).toBeGreaterThan(Number(bar?.y2));
  expect(chart.table.rows[0]).toEqual(['1 tray', '0', '']);
  const [, formula, simulated] = chart.table.rows[3] ?? [];
  expect(Math.abs(Number(formula) - Number(simulated))).toBeLessThan(10);
  expect(chart.title).toBe('Chance to show the difference, with 4 trays of each and with others');
  expect(chart.description).toContain('4 trays: ');
});

test('a plan of many trays has room in the picture, and before the simulation no diamond', () => {
  const chart = chanceChart(planAnswer(heights, { trials: 0 }), en);
  expect(elements(chart, 'circle')).toHaveLength(38);
  expect(elements(chart, 'line').filter((line) => line['stroke-width'] === 2)).toEqual([]);
});

test('the ranges lie around the truth, and the strip spans what is too small to matter', () => {
  const chart = planRangeChart(planAnswer(germination, { trials: 400 }), '', en);
  if (chart === null) throw new Error('no chart');
  const [there, none] = elements(chart, 'line').filter((line) => line['stroke-width'] === 2);
  const [atThere, atNone] = elements(chart, 'circle').map(({ cx }) => Number(cx));
  const [strip] = elements(chart, 'rect');
  expect(Number(there?.x1)).toBeLessThan(atThere ?? NaN);
  expect(Number(there?.x2)).toBeGreaterThan(atThere ?? NaN);
  expect((Number(none?.x1) + Number(none?.x2)) / 2).toBeCloseTo(atNone ?? NaN, -1);
  expect(Number(strip?.x)).toBeCloseTo(atThere ?? NaN, 0); // 20 fewer is just what matters
  expect(chart.table.rows.map(([, truth]) => truth)).toEqual(['−20 per 100', '0 per 100']);
});

test('nothing is drawn of ranges that nobody has simulated, nor of one tray each', () => {
  expect(planRangeChart(planAnswer(germination, { trials: 0 }), '', en)).toBeNull();
  expect(planRangeChart(planAnswer({ ...germination, units: 1, crops: 4 }, { trials: 50 }), '', en)).toBeNull();
});

test('every mark stays inside the picture, in both languages and all measures', () => {
  for (const words of [en, wordsFor('de')]) {
    for (const design of [
      germination,
      { ...heights, units: 3 },
      planDesign({ measure: 't50', base: 6, matters: 1, units: 3 }),
    ]) {
      const answer = planAnswer(design, { trials: 60 });
      for (const chart of [chanceChart(answer, words), planRangeChart(answer, 'mm', words)]) {
        if (chart === null) throw new Error('no chart');
        const xs = ['line', 'circle', 'text'].flatMap((name) =>
          elements(chart, name).flatMap(({ x, x1, x2, cx }) => [x, x1, x2, cx].filter((at) => at !== undefined)),
        );
        expect(Math.min(...xs.map(Number))).toBeGreaterThanOrEqual(0);
        expect(Math.max(...xs.map(Number))).toBeLessThanOrEqual(WIDTH);
        expect(chart.svg).not.toMatch(/NaN|undefined|style=/);
      }
    }
  }
});

test('words in a drawing cannot become markup', () => {
  expect(mark('text', { x: 1.04 }, 'a < b & c')).toBe('<text x="1">a &lt; b &amp; c</text>');
});
