import { expect, test } from 'vitest';
import { shrunkDispersion } from '../../src/statistics/shrunk-dispersion.ts';

test('without information: φ* 2 on ν 2', () => {
  expect(shrunkDispersion(0, 0)).toEqual({ used: 2, dfUsed: 2 });
});

test('two units that agree by luck do not look sure', () => {
  expect(shrunkDispersion(0.01, 1)).toEqual({ used: 1.005, dfUsed: 2 });
});

test('never below 1', () => {
  expect(shrunkDispersion(0.5, 6)).toEqual({ used: 1, dfUsed: 7 });
});

test('pulls φ towards 2 and lets go as degrees of freedom grow', () => {
  const used = [1, 4, 16, 64, 1000].map((df) => shrunkDispersion(4 * df, df).used);
  expect(used).toEqual([...used].sort((a, b) => a - b));
  expect(used[0]).toBe(3);
  expect(used.at(-1)).toBeCloseTo(4, 2);
});

test.each([
  [-1, 3],
  [1, -1],
  [NaN, 1],
])('refuses %d on %d', (statistic, df) => {
  expect(() => shrunkDispersion(statistic, df)).toThrow(`got ${statistic} on ${df}`);
});
