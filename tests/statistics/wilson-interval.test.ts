import { expect, test } from 'vitest';
import { normalQuantile } from '../../src/statistics/distributions/normal.ts';
import { wilsonInterval } from '../../src/statistics/wilson-interval.ts';
import reference from '../reference/r/proportions.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

const z = normalQuantile(0.975);

test.each(reference.wilson)('matches R for $x of $n with quantile $quantile', ({ x, n, quantile, lower, upper }) => {
  const interval = wilsonInterval(x / n, n, quantile);
  expectClose(interval.lower, lower);
  expectClose(interval.upper, upper);
});

// Newcombe (1998), Stat. Med. 17, 857–872, Table I, method 3; from memory, equal to R to four digits.
test.each([
  [81, 263, 0.25529, 0.36621],
  [15, 148, 0.06239, 0.16049],
  [0, 20, 0, 0.16113],
  [1, 29, 0.00611, 0.17176],
  [47, 50, 0.83783, 0.97939],
  [100, 100, 0.96301, 1],
])('%d of %d: the published limits', (x, n, lower, upper) => {
  const interval = wilsonInterval(x / n, n, z);
  expect(Math.abs(interval.lower - lower)).toBeLessThanOrEqual(5.1e-6);
  expect(Math.abs(interval.upper - upper)).toBeLessThanOrEqual(5.1e-6);
});

test('mirrors its limits when successes and failures swap', () => {
  expectClose(wilsonInterval(0.28, 25, z).lower, 1 - wilsonInterval(0.72, 25, z).upper);
});

test('is exactly 0 or 1 at the ends and never without width', () => {
  expect(wilsonInterval(0, 37, z).lower).toBe(0);
  expect(wilsonInterval(1, 37, z).upper).toBe(1);
  expect(wilsonInterval(1, 37, z).lower).toBeLessThan(1);
});

test('narrows with more seeds and widens with the quantile', () => {
  const width = (n: number, quantile: number) =>
    wilsonInterval(0.9, n, quantile).upper - wilsonInterval(0.9, n, quantile).lower;
  expect(width(200, z)).toBeLessThan(width(100, z));
  expect(width(100, 2.4)).toBeGreaterThan(width(100, z));
});

test.each([
  [-0.1, 25, 2],
  [1.1, 25, 2],
  [0.5, 0, 2],
  [0.5, 25, 0],
  [NaN, 25, 2],
])('refuses %d of %d with %d', (share, size, quantile) => {
  expect(() => wilsonInterval(share, size, quantile)).toThrow(`got ${share} of ${size} with ${quantile}`);
});
