import { expect, test } from 'vitest';
import { tQuantile } from '../../src/statistics/distributions/t.ts';
import { pairedT } from '../../src/statistics/paired-t.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { maize, minus, sleep } from '../support/published.ts';

test.each(reference.paired)('$differences matches R', (expected) => {
  const found = pairedT(expected.differences);
  expectClose(found?.difference, expected.difference);
  expectClose(found?.se, expected.se, 1e-8); // R centres differently where values are large
  expectClose(found?.df, expected.df);
  expectClose(found?.p, expected.p, 1e-8);
});

// Fisher (1935), The Design of Experiments: mean 2.617 in, t = 2.148, both from memory; further digits by R.
test('Darwin’s maize: t 2.14799 on 14, p 0.049703', () => {
  const found = pairedT(minus(maize.cross, maize.self));
  expectClose(found?.difference, 2.616667, 5e-7);
  expectClose(found?.se, 1.218195, 5e-7);
  expectClose(found?.statistic, 2.14799, 3e-6);
  expect(found?.df).toBe(14);
  expectClose(found?.p, 0.049703, 1e-5);
  const reach = tQuantile(0.975, 14) * (found?.se ?? NaN);
  expectClose((found?.difference ?? NaN) - reach, 0.0038992, 2e-5);
  expectClose((found?.difference ?? NaN) + reach, 5.2294342, 1e-8);
});

test('sleep, paired: t −4.06213 on 9, p 0.0028329 (R documentation)', () => {
  const found = pairedT(minus(sleep.one, sleep.two));
  expectClose(found?.statistic, -4.06213, 2e-6);
  expectClose(found?.p, 0.0028329, 2e-5);
});

test('turning all signs turns the sign of t only', () => {
  const d = [1, 4, -2, 3.5];
  expectClose(pairedT(d.map((x) => -x))?.statistic, -(pairedT(d)?.statistic ?? NaN));
  expectClose(pairedT(d.map((x) => -x))?.p, pairedT(d)?.p ?? NaN);
});

test('where all differences are the same there is no test', () => {
  expect(pairedT([5, 5, 5])).toBeNull();
  expect(pairedT([0, 0])).toBeNull();
});

test('refuses a single block', () => {
  expect(() => pairedT([1])).toThrow(RangeError);
});
