import { expect, test, vi } from 'vitest';
import { remembered } from '../../src/statistics/remembered.ts';

test('asks once for each pair of numbers, and keeps a and b apart', () => {
  const f = vi.fn((a: number, b: number) => a / b);
  const g = remembered(f);
  expect([g(1, 2), g(2, 1), g(1, 2), g(2, 1), g(1, 4)]).toEqual([0.5, 2, 0.5, 2, 0.25]);
  expect(f.mock.calls).toEqual([
    [1, 2],
    [2, 1],
    [1, 4],
  ]);
});

test('begins anew when it is full', () => {
  const f = vi.fn((a: number, b: number) => 10 * a + b);
  const g = remembered(f, 2);
  expect([g(1, 1), g(1, 2), g(1, 1), g(3, 3), g(1, 1), g(3, 3)]).toEqual([11, 12, 11, 33, 11, 33]);
  expect(f.mock.calls).toEqual([
    [1, 1],
    [1, 2],
    [3, 3],
    [1, 1],
  ]);
});

test('does not keep what was thrown', () => {
  const f = vi.fn((): number => {
    throw new RangeError('no');
  });
  const g = remembered(f);
  expect(() => g(1, 1)).toThrow('no');
  expect(() => g(1, 1)).toThrow('no');
  expect(f).toHaveBeenCalledTimes(2);
});
