import fc from 'fast-check';
import { expect, test } from 'vitest';
import { niceScale } from '../../src/charts/nice-scale.ts';

test('ticks are round and without rounding dust', () => {
  expect(niceScale([-7, 39])).toEqual({ low: -20, high: 40, ticks: [-20, 0, 20, 40] });
  expect(niceScale([0.1, 0.74])).toEqual({ low: 0, high: 0.8, ticks: [0, 0.2, 0.4, 0.6, 0.8] });
  expect(niceScale([5.2, 5.6]).ticks).toEqual([5.2, 5.3, 5.4, 5.5, 5.6]);
});

test('values that are all alike get room on both sides; no values give 0 to 1', () => {
  expect(niceScale([40, 40])).toEqual({ low: 36, high: 44, ticks: [36, 38, 40, 42, 44] });
  expect(niceScale([0])).toEqual({ low: -1, high: 1, ticks: [-1, -0.5, 0, 0.5, 1] });
  expect(niceScale([])).toMatchObject({ low: 0, high: 1 });
});

test('takes in every value with two to six ticks, ends included', () => {
  const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(value, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (from, width) => {
      const { low, high, ticks } = niceScale([from, from + width]);
      expect(low).toBeLessThanOrEqual(from + 1e-8 * width);
      expect(high).toBeGreaterThanOrEqual(from + width - 1e-8 * width);
      expect(ticks.length).toBeGreaterThanOrEqual(2);
      expect(ticks.length).toBeLessThanOrEqual(6);
      expect([ticks[0], ticks.at(-1)]).toEqual([low, high]);
    }),
    { seed: 6 },
  );
});

test('refuses what has no size', () => {
  expect(() => niceScale([0, Infinity])).toThrow(RangeError);
  expect(() => niceScale([NaN])).toThrow(RangeError);
});
