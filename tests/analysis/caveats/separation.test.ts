import { expect, test } from 'vitest';
import { separation } from '../../../src/analysis/caveats/separation.ts';

const each = (...values: string[]) => values.map((value) => [value]);

test('all of one treatment in one place and none of the other there are kept apart', () => {
  expect(separation(each('low', 'low', 'low'), each('high', 'high', 'high'))).toEqual({
    treatment: ['low'],
    control: ['high'],
  });
  expect(separation(each('low', 'low'), each('high', 'middle'))).toEqual({
    treatment: ['low'],
    control: ['high', 'middle'],
  });
});

test('one tray across is enough to tell them together again', () => {
  expect(separation(each('low', 'low', 'high'), each('high', 'high', 'high'))).toBeNull();
});

test('several shared places apart are apart, places of their own are not', () => {
  expect(separation(each('1', '1', '2', '2'), each('3', '3', '4', '4'))).not.toBeNull();
  expect(separation(each('1', '2', '3'), each('4', '5', '6'))).toBeNull();
  expect(separation(each('1', '1', '2'), each('3', '3', '4'))).toBeNull();
});

test('where one is not recorded nothing is said', () => {
  expect(separation([['low'], []], each('high', 'high'))).toBeNull();
  expect(separation([], each('high', 'high'))).toBeNull();
});

test('a sowing may have several values', () => {
  expect(separation([['ann', 'bob'], ['ann']], [['cat'], ['cat', 'dan']])).not.toBeNull();
  expect(separation([['ann', 'bob'], ['ann']], [['cat'], ['cat', 'bob']])).toBeNull();
});
