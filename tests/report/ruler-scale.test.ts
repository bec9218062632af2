import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rulerScale } from '../../src/report/ruler-scale.ts';
import { makeComparison } from '../support/make-comparison.ts';

test('takes in zero, the interval and the margin, and ends on ticks', () => {
  const scale = rulerScale([makeComparison({ estimate: 12, lower: 3, upper: 21, margin: 5 })]);
  expect(scale?.ticks).toEqual([-5, 0, 5, 10, 15, 20, 25]);
  expect(scale?.at(-5)).toBe(8);
  expect(scale?.at(25)).toBe(92);
});

test('one ruler serves all comparisons', () => {
  const scale = rulerScale([
    makeComparison({ estimate: 2, lower: -30, upper: 34 }),
    makeComparison({ estimate: -1, lower: -2, upper: 0 }),
  ]);
  expect(scale?.ticks).toEqual([-40, -20, 0, 20, 40]);
});

test('draws nothing where nothing is known', () => {
  expect(rulerScale([makeComparison({ estimate: null })])).toBeNull();
});

test('a difference of nothing still has a ruler', () => {
  expect(rulerScale([makeComparison({ estimate: 0, lower: 0, upper: 0 })])?.ticks.length).toBeGreaterThanOrEqual(2);
});

test('every value lies on the ruler, zero has a tick, ticks are few', () => {
  const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });
  fc.assert(
    fc.property(value, value, value, (estimate, a, b) => {
      const [lower, upper] = [Math.min(a, b), Math.max(a, b)];
      const scale = rulerScale([makeComparison({ estimate, lower, upper })]);
      for (const at of [estimate, lower, upper, 0]) {
        expect(scale?.at(at)).toBeGreaterThan(7.99);
        expect(scale?.at(at)).toBeLessThan(92.01);
      }
      expect(scale?.ticks.some((tick) => tick === 0)).toBe(true);
      expect(scale?.ticks.length).toBeLessThanOrEqual(9);
    }),
    { seed: 20261125 },
  );
});
