import { expect, test } from 'vitest';
import { typedCountText } from '../../../src/trial/bench/typed-count-text.ts';
import { typedName } from '../../../src/trial/bench/typed-name.ts';
import { typedText } from '../../../src/trial/bench/typed-text.ts';
import { typedTrait } from '../../../src/trial/bench/typed-trait.ts';
import { typedValue } from '../../../src/trial/bench/typed-value.ts';

test.each([
  ['', null],
  [' 12 ', 12],
  ['０', 0],
  ['nc', 'NC'],
  ['-', 'NC'],
  ['-3', undefined],
  ['4.5', undefined],
  ['20+', undefined],
  ['99999999', undefined],
])('the count %j is read as %j', (text, read) => expect(typedCountText(text)).toBe(read));

test.each([
  ['', null],
  ['4,2', 4.2],
  ['4.2', 4.2],
  ['−0', 0],
  ['1.234,5', undefined],
  ['42 mm', undefined],
  ['1e3', undefined],
])('the measurement %j is read as %j', (text, read) => expect(typedValue(text)).toBe(read));

test('names and texts are kept as the files give them back', () => {
  expect(typedName('  Oda\u00a0  K. ')).toBe('Oda K.');
  expect(typedName('n/a')).toBe(null);
  expect(typedText(' fell\tover,\n twice ')).toBe('fell over, twice');
  expect(typedText(' - ')).toBe(null);
  expect([...(typedName('x'.repeat(200)) ?? '')]).toHaveLength(100);
});

test('a trait may be typed with its unit in brackets', () => {
  expect(typedTrait('height', 'mm')).toEqual({ column: 'height', unit: 'mm' });
  expect(typedTrait('Height (cm)', '')).toEqual({ column: 'Height', unit: 'cm' });
  expect(typedTrait('leaves', ' ')).toEqual({ column: 'leaves', unit: null });
});

test.each(['', 'day', 'Plant', 'sowing (1)', '=x', 'a(b)c'])('%j cannot be the name of a trait', (name) => {
  expect(typedTrait(name, '')).toBe(null);
});
