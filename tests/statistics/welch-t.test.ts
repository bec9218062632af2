import { expect, test } from 'vitest';
import { tQuantile } from '../../src/statistics/distributions/t.ts';
import { welchT } from '../../src/statistics/welch-t.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { maize, sleep } from '../support/published.ts';
import { withMoments } from '../support/with-moments.ts';

test.each(reference.means)('$a against $b matches R', ({ a, b, welch }) => {
  const found = welchT(a, b);
  expectClose(found?.difference, welch.difference);
  expectClose(found?.se, welch.se);
  expectClose(found?.df, welch.df);
  expectClose(found?.statistic, welch.statistic);
  expectClose(found?.p, welch.p);
});

test('sleep: t −1.86081, df 17.7765, p 0.079394 (R documentation)', () => {
  const found = welchT(sleep.one, sleep.two);
  expectClose(found?.statistic, -1.86081, 5e-6);
  expectClose(found?.df, 17.7765, 5e-6);
  expectClose(found?.p, 0.079394, 1e-5);
});

test('maize, unpaired: t 2.43711 on 22.1641, interval 0.3909566 to 4.8423767 (R; df also from memory of R’s documentation)', () => {
  const found = welchT(maize.cross, maize.self);
  expectClose(found?.statistic, 2.43711, 5e-6);
  expectClose(found?.df, 22.1641, 5e-6);
  expectClose(found?.p, 0.023283, 5e-5);
  const reach = tQuantile(0.975, found?.df ?? NaN) * (found?.se ?? NaN);
  expectClose((found?.difference ?? NaN) - reach, 0.3909566, 5e-7);
  expectClose((found?.difference ?? NaN) + reach, 4.8423767, 5e-8);
});

// Lakens (2017), Soc. Psychol. Personal. Sci. 8, 355–362, from memory: t(181.1) = −2.69, p = .004; digits by R.
test('equivalence example: 5.25 (0.95, 95) against 5.22 (0.83, 89)', () => {
  const found = welchT(withMoments(95, 5.25, 0.95), withMoments(89, 5.22, 0.83));
  const { difference = NaN, se = NaN, df = NaN } = found ?? {};
  expectClose(df, 181.1344, 5e-7);
  expectClose((difference - 0.3835687) / se, -2.6927714, 1e-6);
  expectClose((difference + 0.3835687) / se, 3.1497301, 1e-6);
  const reach = tQuantile(0.95, df) * se;
  expectClose(difference - reach, -0.1870843, 1e-6);
  expectClose(difference + reach, 0.2470843, 1e-6);
});

test('order, shift and unit do not matter; swapping turns the sign', () => {
  const [a, b] = [
    [4, 7, 5.5],
    [9, 6, 8, 8.25],
  ];
  const found = welchT(a, b);
  expectClose(welchT([...a].reverse(), b)?.p, found?.p ?? NaN);
  expectClose(
    welchT(
      a.map((x) => 100 + 25.4 * x),
      b.map((x) => 100 + 25.4 * x),
    )?.statistic,
    found?.statistic ?? NaN,
  );
  expectClose(welchT(b, a)?.statistic, -(found?.statistic ?? NaN));
  expectClose(welchT(b, a)?.df, found?.df ?? NaN);
});

test('where neither group varies there is no test', () => {
  expect(welchT([2, 2, 2], [3, 3])).toBeNull();
  expect(welchT([0.1, 0.1, 0.1], [0.3, 0.1 + 0.2])).toBeNull();
});

test('refuses a single unit', () => {
  expect(() => welchT([1], [2, 3])).toThrow('needs 2 finite values or more, got [1]');
});
