import { expect, test } from 'vitest';
import { normalCdf, normalQuantile, normalUpper } from '../../../src/statistics/distributions/normal.ts';
import reference from '../../reference/r/distributions.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

test.each(reference.normal)('both tails at $x match R', ({ x, lower, upper }) => {
  expectClose(normalCdf(x), lower);
  expectClose(normalUpper(x), upper);
});

test.each(reference.normalQuantile)('the quantile of $p matches R', ({ p, x }) => {
  expectClose(normalQuantile(p), x, 1e-12);
});

test('tail and quantile undo each other, however small the tail', () => {
  for (const p of [1e-200, 1e-40, 1e-12, 1e-5, 0.1, 0.4]) expectClose(normalCdf(normalQuantile(p)), p, 1e-11);
});

test.each([0, 1, -0.1, 1.1, NaN])('no quantile of %d', (p) => {
  expect(() => normalQuantile(p)).toThrow(
    new RangeError(`normalQuantile needs a probability between 0 and 1, got ${p}`),
  );
});

test('no tail of NaN', () => {
  expect(() => normalUpper(NaN)).toThrow(RangeError);
});
