import { expect, test } from 'vitest';
import { bisect } from '../../src/statistics/bisect.ts';

test('finds a crossing to the last digit, rising or falling', () => {
  expect(bisect((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
  expect(bisect((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
});

test('an end that is the crossing is found', () => {
  expect(bisect((x) => x, 0, 1)).toBe(0);
  expect(bisect((x) => x - 1, 0, 1)).toBe(1);
});

test('refuses an interval without a crossing', () => {
  expect(() => bisect((x) => x + 1, 0, 1)).toThrow('got 1 at 0 and 2 at 1');
});
