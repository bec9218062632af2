import { expect, test } from 'vitest';
import { variance } from '../../src/statistics/variance.ts';
import { expectClose } from '../support/close.ts';
import { r } from '../support/r.ts';

// NIST StRD, certified standard deviations; data recalled from memory, Michelso is R's `morley`.
test('Michelso: sd 0.0790105478190518', async () => {
  const speeds = await r('299 + morley$Speed / 1000');
  expect(speeds).toHaveLength(100);
  expectClose(Math.sqrt(variance(speeds)), 0.0790105478190518, 1e-12);
});

test('NumAcc4: sd 0.1 on values of ten million', () => {
  const values = Array.from({ length: 1001 }, (_, index) =>
    index === 0 ? 10000000.2 : index % 2 === 1 ? 10000000.1 : 10000000.3,
  );
  expectClose(Math.sqrt(variance(values)), 0.1, 1e-7); // the values themselves are rounded at 1e-9
});

test('readings that are equal, but for rounding, have none', () => {
  expect(variance([0.1, 0.1, 0.1])).toBe(0);
  expect(variance([0.3, 0.1 + 0.2])).toBe(0);
  expect(variance([0, 0])).toBe(0);
  expect(variance([1e-300, 2e-300])).toBeGreaterThanOrEqual(0);
});

test('shifting changes nothing, scaling squares', () => {
  const values = [3, 4.5, 9, 2.25];
  expectClose(variance(values.map((value) => value + 1024)), variance(values));
  expectClose(variance(values.map((value) => value * -8)), 64 * variance(values));
});

test('refuses one value, or what is no number', () => {
  expect(() => variance([1])).toThrow('variance needs 2 finite values or more, got [1]');
  expect(() => variance([1, NaN])).toThrow(RangeError);
});
