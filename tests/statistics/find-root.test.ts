import { expect, test } from 'vitest';
import { findRoot } from '../../src/statistics/find-root.ts';

test('finds a crossing to the last digits, rising or falling, from either end', () => {
  for (const [from, to] of [
    [0, 2],
    [2, 0],
  ] as const) {
    expect(findRoot((x) => x * x - 2, from, to)).toBeCloseTo(Math.SQRT2, 15);
    expect(findRoot((x) => 2 - x * x, from, to)).toBeCloseTo(Math.SQRT2, 15);
  }
});

test('flat stretches, steep steps and jumps do not lead it astray', () => {
  expect(findRoot((x) => (x - 1) ** 9, 0, 5)).toBeCloseTo(1, 1);
  expect(findRoot((x) => Math.tanh(1e6 * (x - 0.3)), -10, 10)).toBeCloseTo(0.3, 14);
  expect(findRoot((x) => (x < 0.7 ? -1 : 1e-9), 0, 1)).toBeCloseTo(0.7, 14);
  expect(findRoot((x) => x - 1e-200, -1, 1)).toBeCloseTo(0, 15);
});

test('is quick on a smooth function', () => {
  let calls = 0;
  findRoot((x) => (calls++, Math.exp(x) - 5), -10, 10);
  expect(calls).toBeLessThan(20);
});

test('an end that is the crossing is found', () => {
  expect(findRoot((x) => x, 0, 1)).toBe(0);
  expect(findRoot((x) => x - 1, 0, 1)).toBe(1);
});

test('refuses an interval without a crossing, or a function that is no number', () => {
  expect(() => findRoot((x) => x + 1, 0, 1)).toThrow('got 1 at 0 and 2 at 1');
  expect(() => findRoot(() => NaN, 0, 1)).toThrow(RangeError);
  expect(() => findRoot((x) => (x % 1 === 0 ? x - 0.5 : NaN), 0, 1)).toThrow('got NaN at 0.5');
});
