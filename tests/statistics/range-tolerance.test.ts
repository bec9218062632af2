import { expect, test } from 'vitest';
import { rangeTolerance } from '../../src/statistics/range-tolerance.ts';
import { expectClose } from '../support/close.ts';

// 7 CFR 201.55 (edition of 2015), both tables as printed: means from–to, limit.
const four =
  '99→5, 98→6, 97→7, 96→8, 95→9, 94–93→10, 92–91→11, 90–89→12, 88–87→13, 86–84→14, 83–81→15, 80–78→16, 77–73→17, 72–67→18, 66–56→19, 55–51→20';
const two = '97–96→6, 95→7, 94–93→8, 92–90→9, 89–88→10, 87–84→11, 83–81→12, 80–76→13, 75–69→14, 68–55→15, 54–51→16';
const rows = (
  [
    [4, four],
    [2, two],
  ] as const
).flatMap(([replicates, text]) =>
  text.split(', ').flatMap((row) => {
    const [means = '', limit] = row.split('→');
    const [high = NaN, low = high] = means.split('–').map(Number);
    return Array.from({ length: high - low + 1 }, (_, index) => [replicates, low + index, Number(limit)] as const);
  }),
);

test('the printed tables have 49 and 47 rows', () => {
  expect(rows.filter(([replicates]) => replicates === 4)).toHaveLength(49);
  expect(rows.filter(([replicates]) => replicates === 2)).toHaveLength(47);
});

test.each(rows)('%d replicates of 100 at %d %%: %d, and the same at the mirrored mean', (replicates, mean, limit) => {
  expect(rangeTolerance(mean / 100, replicates, 100)).toBe(limit / 100);
  expect(rangeTolerance((101 - mean) / 100, replicates, 100)).toBe(limit / 100);
});

test('the mean is rounded to a whole percentage first', () => {
  expect(rangeTolerance(0.9449, 4, 100)).toBe(0.1);
  expect(rangeTolerance(0.945, 4, 100)).toBe(0.09);
});

// Example of sources.md 1.7, by R: 3.9840 √(85·15/50) = 20.12.
test('4 × 50 at 85 %: 20.12 points by the formula', () => {
  expectClose(rangeTolerance(0.85, 4, 50), 0.2012, 1e-4);
});

test('the formula, rounded, gives 36 of the 49 four-replicate rows and is never off by more than one', () => {
  const off = rows
    .filter(([replicates]) => replicates === 4)
    .map(([, mean, limit]) => Math.round(100 * (rangeTolerance(mean / 100, 4, 100.0001) ?? NaN)) - limit);
  expect(off.filter((gap) => gap === 0)).toHaveLength(36);
  expect(Math.max(...off.map(Math.abs))).toBe(1);
});

test('where the table has no row the formula stands in', () => {
  expectClose(rangeTolerance(0.98, 2, 100), 3.1698 * Math.sqrt((0.98 * 0.02) / 100), 2e-5);
  expectClose(rangeTolerance(0.997, 4, 100), 3.984 * Math.sqrt((0.997 * 0.003) / 100), 2e-5);
  expectClose(rangeTolerance(0.8, 3, 100), 3.6823 * Math.sqrt((0.8 * 0.2) / 100), 2e-5);
});

test('at 0 and 100 % there is no luck', () => {
  expect(rangeTolerance(0, 4, 100)).toBeNull();
  expect(rangeTolerance(1, 3, 50)).toBeNull();
});

test.each([
  [1.2, 4, 100],
  [0.5, 1, 100],
  [0.5, 2.5, 100],
  [0.5, 4, 0],
])('refuses %d, %d of %d', (share, replicates, seeds) => {
  expect(() => rangeTolerance(share, replicates, seeds)).toThrow(`got ${share}, ${replicates} of ${seeds}`);
});
