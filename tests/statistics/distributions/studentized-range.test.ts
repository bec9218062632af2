import { expect, test } from 'vitest';
import { normalCdf } from '../../../src/statistics/distributions/normal.ts';
import { rangeCdf, rangeQuantile } from '../../../src/statistics/distributions/studentized-range.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each([...reference.range, ...reference.rangeOfMany])('P(range of $k ≤ $q) matches R', ({ q, k, lower }) => {
  expectClose(rangeCdf(q, k), lower);
});

test.each(reference.rangeQuantile)('the 0.975 quantile of $k values matches R, which is good to 1e-4', ({ k, q }) => {
  expectClose(rangeQuantile(0.975, k), q, 1e-4);
});

// Computed in R, to four digits (sources.md 1.7).
test.each([
  [2, 3.1698],
  [3, 3.6823],
  [4, 3.984],
  [5, 4.197],
  [6, 4.3609],
  [7, 4.4936],
  [8, 4.6049],
  [10, 4.784],
  [12, 4.925],
  [16, 5.1389],
])('q(0.975; %d, ∞) is %d', (k, q) => {
  expectClose(rangeQuantile(0.975, k), q, 2e-5);
});

test('the range of two is √2 times a normal difference', () => {
  for (const q of [0.2, 1, 4]) expectClose(rangeCdf(q, 2), 2 * normalCdf(q / Math.SQRT2) - 1);
});

test('quantile and probability undo each other', () => {
  for (const p of [0.01, 0.5, 0.9999]) expectClose(rangeCdf(rangeQuantile(p, 5), 5), p);
});

test.each([
  [-1, 3],
  [1, 1],
  [1, 2.5],
])('refuses the range %d of %d', (q, k) => {
  expect(() => rangeCdf(q, k)).toThrow(`got ${q} of ${k}`);
});

test('no quantile of 1', () => {
  expect(() => rangeQuantile(1, 3)).toThrow('got 1');
});
