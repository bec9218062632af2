import { expect, test } from 'vitest';
import { amount } from '../../src/wording/amount.ts';
import { rounded } from '../../src/wording/rounded.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

test('a half goes away from zero, whatever binary arithmetic makes of it', () => {
  const differences = [100 * (0.705 - 0.19), 100 * (0.85 - 0.795), 100 * (0.89 - 0.895), (57 / 200) * 100];
  expect(differences.map((difference) => rounded(difference))).toEqual([52, 6, -1, 29]);
  expect([rounded(0.35, 1), rounded(-1.005, 2), rounded(0), rounded(2 / 3, 3)]).toEqual([0.4, -1.01, 0, 0.667]);
  expect([rounded(-0), rounded(-7), rounded(12_345), rounded(-0.2)]).toEqual([0, -7, 12_345, -0]);
});

test('sentence and table say the same', () => {
  for (const value of [100 * (0.705 - 0.19), 1.35, 1.005, 28.5]) {
    for (const digits of [0, 1, 2]) {
      const { size } = amount(value, digits);
      for (const language of ['en', 'de'])
        expect(wordsFor(language).number(value, digits)).toBe(wordsFor(language).number(size, digits));
    }
  }
});
