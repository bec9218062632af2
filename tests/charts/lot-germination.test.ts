import { expect, test } from 'vitest';
import { PAPER } from '../../src/charts/chart-theme.ts';
import { lotGermination } from '../../src/charts/lot-germination.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { inventTests } from './invent-tests.ts';
import { readSvg } from './read-svg.ts';

const words = wordsFor('en');
const tests = inventTests();

test('says in words what it draws, and all of it', () => {
  const chart = lotGermination('Leek', tests, words);
  expect(chart?.title).toBe('Leek: tests from 4 November 2023 to 4 November 2026');
  expect(chart?.description.split('. ').slice(0, 3)).toEqual([
    'Share that came up in each test of a seed lot, by date',
    '4 November 2023, Shed, at the start: 96 of 100 (192 of 200 seeds, 4 trays; the data fit with 87 to 100)',
    '4 November 2023, Fridge, at the start: 96 of 100 (192 of 200 seeds, 4 trays; the data fit with 87 to 100)',
  ]);
  expect(chart?.table.rows).toHaveLength(tests.length);
});

test('one date is no course: the table says it', () => {
  expect(lotGermination('Leek', tests.slice(0, 2), words)).toBeNull();
  expect(lotGermination('Leek', [], words)).toBeNull();
});

test('more series than can be told apart are left to the table', () => {
  const many = Array.from({ length: 11 }, (_, index) =>
    tests.slice(-1).map((one) => ({ ...one, trial: { ...one.trial, id: `trial-${index}` } })),
  ).flat();
  expect(lotGermination('Leek', [...tests.slice(0, 4), ...many.slice(0, 10)], words)).not.toBeNull();
  expect(lotGermination('Leek', [...tests.slice(0, 4), ...many], words)).toBeNull();
});

test('marks of one date stand apart, and only tests of one series are joined', async () => {
  const chart = lotGermination('Leek', tests, words);
  const { drawn } = readSvg(await renderSvg(chart!.spec, 'lot'));
  const marks = drawn.filter(({ layer }) => layer === 'tests');
  expect(marks).toHaveLength(tests.length);
  const joins = drawn.filter(({ layer, attributes }) => layer === 'joins' && /L/.test(attributes['d'] ?? ''));
  expect(joins).toHaveLength(2);
  const places = (chart!.spec.datasets as Record<string, { x: number; share: number }[]>)['marks'] ?? [];
  for (const [index, one] of places.entries()) {
    for (const other of places.slice(index + 1)) expect(Math.abs(one.x - other.x)).toBeGreaterThan(4);
  }
});

test('each mark stands at its date, a month is named once, one tray of a kind is dashed and open', () => {
  const [first] = tests;
  const dates = ['2026-04-25', '2026-05-02', '2026-05-16'];
  const single = dates.map((date, index) => ({
    ...first!,
    date,
    trial: { ...first!.trial, id: `trial-${index}` },
    group: {
      ...first!.group,
      stored: null,
      interval: { ...first!.group.interval!, method: index === 0 ? 'wilson-effective' : 'wilson-seeds-only' } as const,
    },
  }));
  const chart = lotGermination('Pea', single, words);
  const data = chart!.spec.datasets as Record<string, { text: string; rangeDash: number[]; fill: string }[]>;
  expect(data['dates']?.map(({ text }) => text)).toEqual(['2026-04', '2026-05']);
  expect(data['marks']?.map(({ rangeDash }) => rangeDash[1])).toEqual([0, 3, 3]);
  expect(new Set(data['marks']?.slice(1).map(({ fill }) => fill))).toEqual(new Set([PAPER]));
  const drawn = chart!.spec.datasets as Record<string, { x: number }[]>;
  expect(drawn['marks']?.map(({ x }) => x)).toEqual(drawn['ticks']?.map(({ x }) => x));
  expect(chart!.subtitle).toContain(words.ui['chart.seedLuckOnly']);
  expect(lotGermination('Pea', tests, words)!.subtitle).not.toContain(words.ui['chart.seedLuckOnly']);
});
