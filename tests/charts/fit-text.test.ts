import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitText } from '../../src/charts/fit-text.ts';
import { textWidth } from '../../src/charts/text-width.ts';

test('breaks at blanks and cuts what is left with an ellipsis', () => {
  const label = 'Sealed jar with silica gel in the fridge';
  expect(fitText(label, 100, 14)).toEqual(['Sealed jar with', 'silica gel in', 'the fridge']);
  expect(fitText(label, 100, 14, 2)).toEqual(['Sealed jar with', 'silica gel in…']);
});

test('a word that is too wide is broken between characters, never inside one', () => {
  const family = '👩‍🌾';
  expect(fitText(family.repeat(5), 40, 14, 9)).toEqual([family.repeat(2), family.repeat(2), family]);
});

test('no blanks, no text, no lines', () => {
  expect(fitText('', 100, 14)).toEqual([]);
  expect(fitText(' \n\t ', 100, 14)).toEqual([]);
});

test('what no SVG may hold is replaced', () => {
  expect(fitText('a\u0000b\uD800c', 100, 14)).toEqual(['a\uFFFDb\uFFFDc']);
});

test('no line is wider than the room, whatever the text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), fc.integer({ min: 40, max: 300 }), (text, width) => {
      const lines = fitText(text, width, 14, 3);
      expect(lines.length).toBeLessThanOrEqual(3);
      for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(width);
    }),
    { seed: 4 },
  );
});

test('whole texts keep every word', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,8}$/), { maxLength: 12 }), (given) => {
      expect(fitText(given.join(' '), 120, 14, 99).join(' ')).toBe(given.join(' '));
    }),
    { seed: 5 },
  );
});
