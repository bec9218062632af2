import { expect, test } from 'vitest';
import { chiSquareUpper } from '../../../src/statistics/distributions/chi-square.ts';
import { fQuantile, fUpper } from '../../../src/statistics/distributions/f.ts';
import { tQuantile } from '../../../src/statistics/distributions/t.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each(reference.f)('the upper tail at $x on $df1, $df2 matches R', ({ x, df1, df2, upper }) => {
  expectClose(fUpper(x, df1, df2), upper);
});

test.each(reference.fQuantile)('the quantile of $p on $df1, $df2 matches R', ({ p, df1, df2, x }) => {
  expectClose(fQuantile(p, df1, df2), x);
});

test('quantile and tail undo each other where p is small', () => {
  for (const p of [1e-30, 1e-10, 0.001]) expectClose(fUpper(1 / fQuantile(p, 1, 1000), 1000, 1), p);
  expectClose(fQuantile(0.001, 1, 1000), tQuantile(0.5005, 1000) ** 2);
});

test('turning the ratio upside down swaps the tails', () => {
  expectClose(fUpper(3.2, 4, 9), 1 - fUpper(1 / 3.2, 9, 4));
});

test('with many degrees of freedom below it nears chi-square', () => {
  expectClose(fUpper(2.1, 5, 1e8), chiSquareUpper(10.5, 5), 1e-6);
});

test.each([
  [-1, 1, 1],
  [1, 0, 1],
  [1, 1, NaN],
])('refuses %d on %d, %d', (x, df1, df2) => {
  expect(() => fUpper(x, df1, df2)).toThrow(`got ${x} on ${df1}, ${df2}`);
});

test('no quantile of 1', () => {
  expect(() => fQuantile(1, 2, 2)).toThrow('got 1 on 2, 2');
});
