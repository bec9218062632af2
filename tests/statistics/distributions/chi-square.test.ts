import { expect, test } from 'vitest';
import { chiSquareCdf, chiSquareUpper } from '../../../src/statistics/distributions/chi-square.ts';
import { normalUpper } from '../../../src/statistics/distributions/normal.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each(reference.chiSquare)('both tails at $x on $df match R', ({ x, df, lower, upper }) => {
  expectClose(chiSquareCdf(x, df), lower);
  expectClose(chiSquareUpper(x, df), upper);
});

test('on one degree of freedom it is a normal value squared', () => {
  for (const z of [0.1, 1, 5, 30]) expectClose(chiSquareUpper(z ** 2, 1), 2 * normalUpper(z));
});

test('an infinite statistic has probability 0', () => {
  expect(chiSquareUpper(Infinity, 2)).toBe(0);
  expect(chiSquareCdf(Infinity, 2)).toBe(1);
});

test.each([
  [-1, 1],
  [1, 0],
  [NaN, 1],
])('refuses %d on %d', (x, df) => {
  expect(() => chiSquareUpper(x, df)).toThrow(`got ${x} on ${df}`);
});
