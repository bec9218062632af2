import { expect, test } from 'vitest';
import { pooledMeans } from '../../src/statistics/pooled-means.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

const lots = [
  { treated: [5, 6, 7.5], control: [4, 4.5] },
  { treated: [9, 9.5], control: [7, 8.8, 8.1, 7] },
];

test.each(reference.pooled.map((expected, index) => ({ index, ...expected })))('case $index matches R', (expected) => {
  const found = pooledMeans(expected.lots);
  expectClose(found?.difference, expected.difference);
  expectClose(found?.se, expected.se);
  expect(found?.df).toBe(expected.df);
  expectClose(found?.p, expected.p);
  expectClose(found?.lotsDiffer.statistic, expected.lotsDiffer.statistic);
  expect(found?.lotsDiffer.df).toEqual(expected.lotsDiffer.df);
  expectClose(found?.lotsDiffer.p, expected.lotsDiffer.p);
});

test('what differs from lot to lot, alike for both treatments, changes nothing', () => {
  const lifted = lots.map(({ treated, control }, index) => ({
    treated: treated.map((x) => x + 16 * index),
    control: control.map((x) => x + 16 * index),
  }));
  expectClose(pooledMeans(lifted)?.p, pooledMeans(lots)?.p ?? NaN);
  expectClose(pooledMeans(lifted)?.lotsDiffer.p, pooledMeans(lots)?.lotsDiffer.p ?? NaN);
});

test('swapping the treatments turns the sign', () => {
  const swapped = pooledMeans(lots.map(({ treated, control }) => ({ treated: control, control: treated })));
  expectClose(swapped?.statistic, -(pooledMeans(lots)?.statistic ?? NaN));
});

test('where nothing varies there is none', () => {
  const flat = { treated: [2, 2], control: [1, 1] };
  expect(pooledMeans([flat, flat])).toBeNull();
});

test('refuses one lot and a single unit', () => {
  expect(() => pooledMeans(lots.slice(0, 1))).toThrow('two lots or more, got 1');
  expect(() => pooledMeans([...lots, { treated: [1], control: [1, 2] }])).toThrow(
    'needs 2 finite values or more, got [1]',
  );
});
