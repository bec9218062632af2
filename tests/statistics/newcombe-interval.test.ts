import { expect, test } from 'vitest';
import { normalQuantile } from '../../src/statistics/distributions/normal.ts';
import { newcombeInterval } from '../../src/statistics/newcombe-interval.ts';
import reference from '../reference/r/proportions.json' with { type: 'json' };

const z = normalQuantile(0.975);
const share = (x: number, n: number) => ({ share: x / n, size: n });

test.each(reference.newcombe)('matches R for $x1/$n1 − $x2/$n2 with quantile $quantile', (expected) => {
  const { x1, n1, x2, n2, quantile } = expected;
  const interval = newcombeInterval(share(x1, n1), share(x2, n2), quantile);
  expect(Math.abs(interval.lower - expected.lower)).toBeLessThan(1e-12); // limits may lie at or near zero
  expect(Math.abs(interval.upper - expected.upper)).toBeLessThan(1e-12);
});

// Newcombe (1998), Stat. Med. 17, 873–890, Table II, method 10; from memory, equal to R.
test.each([
  ['a', 56, 70, 48, 80, 0.0524, 0.3339],
  ['b', 9, 10, 3, 10, 0.1705, 0.809],
  ['c', 6, 7, 2, 7, 0.0582, 0.8062],
  ['d', 5, 56, 0, 29, -0.0381, 0.1926],
  ['e', 0, 10, 0, 20, -0.1611, 0.2775],
  ['f', 0, 10, 0, 10, -0.2775, 0.2775],
  ['g', 10, 10, 0, 20, 0.6791, 1],
  ['h', 10, 10, 0, 10, 0.6075, 1],
])('case %s, %d/%d − %d/%d: the published limits', (_, x1, n1, x2, n2, lower, upper) => {
  const interval = newcombeInterval(share(x1, n1), share(x2, n2), z);
  expect(Math.abs(interval.lower - lower)).toBeLessThanOrEqual(5.1e-5);
  expect(Math.abs(interval.upper - upper)).toBeLessThanOrEqual(5.1e-5);
});

test('swapping the groups turns the interval round', () => {
  const there = newcombeInterval(share(41.5, 50), share(30, 48), 2.3);
  const back = newcombeInterval(share(30, 48), share(41.5, 50), 2.3);
  expect(back).toEqual({ lower: -there.upper, upper: -there.lower });
});

test('stays within −1 to 1 and holds the difference', () => {
  for (const [p, q] of [
    [0, 1],
    [1, 0],
    [0.2, 0.2],
    [1, 1],
    [0.999, 0.001],
  ] as const) {
    const { lower, upper } = newcombeInterval({ share: p, size: 0.7 }, { share: q, size: 900 }, 12.7);
    expect(lower).toBeGreaterThanOrEqual(-1);
    expect(upper).toBeLessThanOrEqual(1);
    expect(lower).toBeLessThanOrEqual(p - q);
    expect(upper).toBeGreaterThanOrEqual(p - q);
  }
});

test('refuses a share above 1', () => {
  expect(() => newcombeInterval(share(5, 4), share(1, 4), 2)).toThrow('got 1.25 of 4 with 2');
});
