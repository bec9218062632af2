import fc from 'fast-check';
import { expect, test } from 'vitest';
import { keepApart } from '../../src/charts/keep-apart.ts';

test('labels that do not touch stay; two that do move apart evenly', () => {
  expect(keepApart([10, 50, 90], 14, 100)).toEqual([10, 50, 90]);
  expect(keepApart([50, 52], 14, 100)).toEqual([44, 58]);
});

test('labels at an edge move inwards', () => {
  expect(keepApart([0, 0, 1], 14, 100)).toEqual([0, 14, 28]);
  expect(keepApart([100, 99], 14, 100)).toEqual([100, 86]);
});

test('whatever is wanted, labels end up apart, in order and inside', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 8 }), (places) => {
      const moved = keepApart(places, 14, 200).toSorted((a, b) => a - b);
      moved.forEach((place, index) => {
        if (index > 0) expect(place - (moved[index - 1] ?? 0)).toBeGreaterThanOrEqual(14 - 1e-9);
        expect(place).toBeGreaterThanOrEqual(-1e-9);
        expect(place).toBeLessThanOrEqual(200 + 1e-9);
      });
    }),
    { seed: 8 },
  );
});
