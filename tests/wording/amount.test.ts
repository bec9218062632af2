import fc from 'fast-check';
import { expect, test } from 'vitest';
import { amount } from '../../src/wording/amount.ts';

const value = fc.oneof(
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.constantFrom(0, 10, -10, 9.999999, 10.000001, -9.999999, 0.0001, -0.0001, 0.5, -0.5, 2.5),
);
const margin = fc.option(fc.constantFrom(0.3, 1, 2.5, 5, 10), { nil: null });
const digits = fc.constantFrom(0, 1, 2);
const seeded = { seed: 20261125, numRuns: 3000 };

test('an amount never crosses zero or the margin in being rounded', () => {
  fc.assert(
    fc.property(value, digits, margin, (given, places, line) => {
      const { sign, size, near } = amount(given, places, line);
      const real = Math.abs(given);
      expect(sign).toBe(Math.sign(given));
      if (near === 'just-over') expect([size === line, real > size]).toEqual([true, true]);
      else if (near === 'just-under') expect([size === line, real < size]).toEqual([true, true]);
      else if (near === 'less-than') expect(real < size && (line === null || line >= size || real > line)).toBe(true);
      else {
        expect(Math.abs(size - real)).toBeLessThanOrEqual(10 ** -places / 2 + 1e-9);
        expect(size === 0).toBe(real === 0);
        if (line !== null) expect(Math.sign(size - line)).toBe(Math.sign(real - line));
      }
    }),
    seeded,
  );
});

test('more and fewer are mirror images', () => {
  fc.assert(
    fc.property(value, digits, margin, (given, places, line) => {
      const [plus, minus] = [amount(given, places, line), amount(-given, places, line)];
      expect([minus.size, minus.near, minus.sign + 0]).toEqual([plus.size, plus.near, 0 - plus.sign]);
    }),
    seeded,
  );
});

test.each([
  [0.3, null, { sign: 1, size: 1, near: 'less-than' }],
  [-0.3, null, { sign: -1, size: 1, near: 'less-than' }],
  [10.2, 10, { sign: 1, size: 10, near: 'just-over' }],
  [9.7, 10, { sign: 1, size: 10, near: 'just-under' }],
  [10, 10, { sign: 1, size: 10, near: 'exact' }],
  [11.5, 10, { sign: 1, size: 12, near: 'exact' }],
])('%d with a margin of %s', (given, line, expected) => {
  expect(amount(given, 0, line)).toMatchObject(expected);
});
