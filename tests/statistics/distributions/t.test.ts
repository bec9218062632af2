import { expect, test } from 'vitest';
import { fUpper } from '../../../src/statistics/distributions/f.ts';
import { normalUpper } from '../../../src/statistics/distributions/normal.ts';
import { tCdf, tQuantile, tTwoSided, tUpper } from '../../../src/statistics/distributions/t.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each(reference.t)('tails at $x on $df match R', ({ x, df, lower, upper, twoSided }) => {
  expectClose(tCdf(x, df), lower);
  expectClose(tUpper(x, df), upper);
  expectClose(tTwoSided(x, df), twoSided);
});

test.each(reference.tQuantile)('the quantile of $p on $df matches R', ({ p, df, x }) => {
  expectClose(tQuantile(p, df), x);
});

test('the middle is exactly 0', () => {
  for (const df of [0.5, 3, 40]) expect(tQuantile(0.5, df)).toBe(0);
});

test('t squared is F on 1: the p-values agree', () => {
  for (const x of [0.3, 1, 2.5, 30]) expectClose(tTwoSided(x, 6.5), fUpper(x ** 2, 1, 6.5));
});

test('with many degrees of freedom it nears the normal', () => {
  expectClose(tUpper(1.96, 1e8), normalUpper(1.96), 1e-6);
});

test.each([
  [NaN, 3],
  [1, 0],
  [1, -2],
  [1, Infinity],
])('refuses %d on %d', (x, df) => {
  expect(() => tUpper(x, df)).toThrow(`got ${x} on ${df}`);
});

test.each([
  [0, 3],
  [1, 3],
  [0.5, 0],
])('no quantile of %d on %d', (p, df) => {
  expect(() => tQuantile(p, df)).toThrow(`got ${p} on ${df}`);
});
