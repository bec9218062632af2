import { expect, test } from 'vitest';
import type { Result } from '../../src/analysis/analysis.ts';
import { lotCurves } from '../../src/charts/lot-curves.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { invent } from './invented.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const LOTS = ['leek', 'onion', 'dill'];
const made = invent({
  treatments: [
    ['Packet', 0.6],
    ['Jar', 0.9],
  ],
  lots: LOTS,
  trays: 2,
  days: [3, 7, 14],
});
const draw = (result: Result = made.result, trial = made.trial) =>
  lotCurves(trial, { ...made.analysis, trial: trial.id }, result, LOTS, words);
const rows = (chart: ReturnType<typeof draw>, name: string) => chart.spec.datasets?.[name] as Record<string, unknown>[];

test('a small plot for each lot, in it every sowing thin and every treatment thick, all to one scale', async () => {
  const chart = draw();
  const { drawn } = readSvg(await renderSvg(chart.spec, 'x'));
  const count = (name: string) => drawn.filter(({ layer }) => layer === name).length;
  expect(rows(chart, 'titles').map(({ text }) => text)).toEqual(LOTS.map((lot) => `Leek (${lot})`));
  expect([count('sowings'), count('checks'), count('ends')]).toEqual([3 * 2 * 2, 3 * 2 * 3, 3 * 2]);
  expect(count('keyMarks')).toBe(2);
  const ends = rows(chart, 'ends').map(({ text }) => Number(text));
  expect(ends).toEqual(made.result.groups.map(({ estimate }) => Math.round(estimate ?? NaN)));
});

test('the table and the text alternative hold the thick lines lot by lot; it says that sowings stand elsewhere', () => {
  const { table, description, further } = draw();
  expect(table.head).toEqual(['Lot', 'Treatment', 'Day 3', 'Day 7', 'Day 14']);
  expect(table.rows.map(([lot, treatment]) => `${lot}, ${treatment}`)).toEqual(
    LOTS.flatMap((lot) => [`Leek (${lot}), Packet`, `Leek (${lot}), Jar`]),
  );
  for (const [lot, treatment, , , last] of table.rows) {
    expect(last).toMatch(/^\d+ of 100$/);
    expect(description).toContain(`${lot}, ${treatment}: day 3: `);
    expect(description).toContain(`day 14: ${last}`);
  }
  expect(further).toBe('counts');
});

test('the finding is the title, or what came up where all lots together have it above', () => {
  expect(draw().title).toBe('Came up by day 14. 3 of 3: different');
  const [first] = made.result.comparisons;
  const together = { ...made.result, comparisons: first ? [{ ...first, lot: 'all', lots: LOTS }] : [] };
  const [a, b] = made.result.groups.map(({ estimate }) => Math.round(estimate ?? NaN));
  expect(draw(together).title).toContain(`Of 100 sown, by the last check (Packet, Jar): Leek (leek) ${a}, ${b}; Leek`);
});

test('the day that is compared is dotted in the lot where counting went on', () => {
  expect(rows(draw(), 'counted')).toEqual([]);
  const early = draw({ ...made.result, days: { leek: 14, onion: 7, dill: 7 } });
  expect(rows(early, 'counted')).toHaveLength(2);
  expect(rows(early, 'axes')[1]?.['text']).toBe('Days since sowing (dotted: day 7, compared)');
  const each = draw({ ...made.result, days: { leek: 3, onion: 7, dill: 14 } });
  expect(rows(each, 'axes')[1]?.['text']).toBe('Days since sowing (dotted: the day compared)');
});

test('a sowing left out is dotted and counts for no thick line', () => {
  const chart = draw({ ...made.result, leftOut: [{ sowing: 'onion-t1-2', reason: 'deviation', what: 'dropped' }] });
  const dotted = rows(chart, 'sowings').filter(({ dash }) => String(dash) === '1.5,2.5');
  expect(new Set(dotted.map(({ line }) => line))).toEqual(new Set(['onion-t1-2']));
  expect(chart.table.rows.map((row) => row.at(-1)?.split(' of ')[1])).toEqual([
    '100',
    '100',
    '100',
    '50',
    '100',
    '100',
  ]);
});

test('one sowing of each is drawn as one line, unless it was left out', () => {
  const one = invent({
    treatments: [
      ['Packet', 0.6],
      ['Jar', 0.9],
    ],
    lots: LOTS,
    trays: 1,
  });
  expect(rows(draw(one.result, one.trial), 'sowings')).toEqual([]);
  expect(draw(one.result, one.trial).subtitle).toBe('Steps: the one tray of each treatment. Marks: days of checking.');
  const out = { ...one.result, leftOut: [{ sowing: 'leek-t1-1', reason: 'deviation' as const, what: 'dropped' }] };
  expect(rows(draw(out, one.trial), 'sowings').length).toBeGreaterThan(0);
});
