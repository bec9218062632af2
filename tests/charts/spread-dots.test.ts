import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadDots } from '../../src/charts/spread-dots.ts';

test('dots that do not touch stay on the line; equal ones pile outwards on both sides', () => {
  expect(spreadDots([0, 20, 40], 9, 30)).toEqual([0, 0, 0]);
  expect(spreadDots([10, 10, 10, 10], 9, 30)).toEqual([0, 9, -9, 18]);
});

test('a pile fuller than its room is packed closer', () => {
  expect(spreadDots([1, 1, 1, 1, 1], 9, 10)).toEqual([0, 5, -5, 10, -10]);
});

test('no two dots share a place unless there is no room', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 14 }), (places) => {
      const moves = spreadDots(places, 5, 1000);
      places.forEach((place, a) =>
        places.slice(0, a).forEach((other, b) => {
          if (Math.abs(place - other) < 5) expect(moves[a]).not.toBe(moves[b]);
        }),
      );
    }),
    { seed: 7 },
  );
});
