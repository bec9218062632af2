import { expect, test } from 'vitest';
import { hodgesLehmann } from '../../src/statistics/hodges-lehmann.ts';
import reference from '../reference/r/means.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { maize } from '../support/published.ts';

test.each(reference.means)('$a against $b matches R', (expected) => {
  expectClose(hodgesLehmann(expected.a, expected.b), expected.hodgesLehmann);
});

test('maize: 3.375, the median of 225 differences (R)', () => {
  expect(hodgesLehmann(maize.cross, maize.self)).toBe(3.375);
});

test('swapping turns the sign, a shift is found again, one odd unit does not carry it away', () => {
  const [a, b] = [
    [1, 2, 3, 4, 5],
    [2, 2.5, 3.5, 6, 7],
  ];
  expect(hodgesLehmann(b, a)).toBe(-hodgesLehmann(a, b));
  expect(
    hodgesLehmann(
      a.map((x) => x + 8),
      a,
    ),
  ).toBe(8);
  expect(hodgesLehmann([...a.slice(1), 1e6], a)).toBeLessThan(5);
});

test('refuses an empty group', () => {
  expect(() => hodgesLehmann([], [1])).toThrow('hodgesLehmann needs 1 finite values or more, got []');
});
