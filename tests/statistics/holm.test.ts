import { expect, test } from 'vitest';
import { holm } from '../../src/statistics/holm.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

test.each(reference.holm)('$p matches R', ({ p, adjusted }) => {
  holm(p).forEach((value, index) => expectClose(value, adjusted[index] ?? NaN, 1e-14));
});

test('0.01, 0.04, 0.03, 0.005 become 0.03, 0.06, 0.06, 0.02 (R)', () => {
  expect(holm([0.01, 0.04, 0.03, 0.005])).toEqual([0.03, 0.06, 0.06, 0.02]);
});

test('adjusting never lowers, never passes 1, keeps the order; one alone stays as it is', () => {
  const p = [0.2, 0.001, 0.9, 0.04, 0.04];
  const adjusted = holm(p);
  adjusted.forEach((value, index) => expect(value).toBeGreaterThanOrEqual(p[index] ?? NaN));
  expect(Math.max(...adjusted)).toBeLessThanOrEqual(1);
  expect(holm([...p].reverse())).toEqual([...adjusted].reverse());
  expect(holm([0.03])).toEqual([0.03]);
  expect(holm([])).toEqual([]);
});

test('refuses what is no probability', () => {
  expect(() => holm([0.1, 1.5])).toThrow('holm needs probabilities, got [0.1,1.5]');
});
