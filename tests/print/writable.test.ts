import { expect, test } from 'vitest';
import { writable } from '../../src/print/writable.ts';

test.each([
  ['Sealed jar, 24 °C – ½ “x” φ* ≤ −3 χ²', 'Sealed jar, 24 °C – ½ “x” φ* ≤ −3 χ²'],
  ['🌱', '[U+1F331]'],
  ['👩‍🌾 ❤️', '[U+1F469][U+1F33E] [U+2764]'],
  ['שלום مرحبا', 'שלום مرحبا'],
  ['中', '[U+4E2D]'],
  ['e\u0301', 'é'],
  ['می\u200Cخواهم', 'می\u200Cخواهم'], // a joiner that belongs to the word stays
  ['', ''],
])('%j is written %j', (text, expected) => {
  expect(writable(text)).toBe(expected);
});
