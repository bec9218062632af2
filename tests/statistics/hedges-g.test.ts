import { expect, test } from 'vitest';
import { hedgesG } from '../../src/statistics/hedges-g.ts';
import { welchT } from '../../src/statistics/welch-t.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { maize } from '../support/published.ts';
import { withMoments } from '../support/with-moments.ts';

test.each(reference.means)('$a against $b matches R', ({ a, b, hedges }) => {
  const found = hedgesG(a, b, 0.95);
  expectClose(found?.estimate, hedges.estimate);
  if (hedges.lower !== null) expectClose(found?.lower, hedges.lower, 1e-7);
  if (hedges.upper !== null) expectClose(found?.upper, hedges.upper, 1e-7);
});

test('maize: g 0.8658562, limits 0.1303816 and 1.6350741 (R)', () => {
  const found = hedgesG(maize.cross, maize.self, 0.95);
  expectClose(found?.estimate, 0.8658562, 1e-7);
  expectClose(found?.lower, 0.1303816, 5e-7);
  expectClose(found?.upper, 1.6350741, 5e-8);
});

// Borenstein et al. (2009), Introduction to Meta-Analysis, chapter 4; from memory, equal to R.
test('103 (5.5) against 100 (4.5), 50 each: d 0.5970, g 0.5924', () => {
  const found = hedgesG(withMoments(50, 103, 5.5), withMoments(50, 100, 4.5), 0.95);
  expect(found?.estimate.toFixed(4)).toBe('0.5924');
  expect(((found?.estimate ?? NaN) / (1 - 3 / (4 * 98 - 1))).toFixed(4)).toBe('0.5970');
});

test('swapping turns the interval round; unit and shift do not matter', () => {
  const [a, b] = [
    [4, 7, 5.5],
    [9, 6, 8, 8.25],
  ];
  const [there, back] = [hedgesG(a, b, 0.9), hedgesG(b, a, 0.9)];
  expectClose(back?.lower, -(there?.upper ?? NaN), 1e-7);
  expectClose(back?.estimate, -(there?.estimate ?? NaN));
  const inches = hedgesG(
    a.map((x) => 2.54 * x + 7),
    b.map((x) => 2.54 * x + 7),
    0.9,
  );
  expectClose(inches?.lower, there?.lower ?? NaN, 1e-7);
});

test('with equal groups and spreads its limits leave zero where the t test does', () => {
  const a = withMoments(4, 0, 1);
  for (const shift of [1.7, 1.74]) {
    const b = a.map((x) => x + shift);
    const outside = (hedgesG(b, a, 0.95)?.lower ?? NaN) > 0;
    expect(outside).toBe((welchT(b, a)?.p ?? NaN) < 0.05);
  }
});

test('a difference of many standard deviations still has limits', () => {
  const found = hedgesG([10, 10.01, 9.99], [20, 20.01, 19.99], 0.95);
  expect(found?.lower).toBeLessThan(-1000);
  expect(found?.upper).toBeLessThan(-300);
});

test('where neither group varies there is none', () => {
  expect(hedgesG([2, 2], [3, 3], 0.95)).toBeNull();
});

test('refuses a level of 95 and a single unit', () => {
  expect(() => hedgesG([1, 2], [3, 4], 95)).toThrow('got 95');
  expect(() => hedgesG([1], [3, 4], 0.95)).toThrow(RangeError);
});
