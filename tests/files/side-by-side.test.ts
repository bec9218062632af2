import { expect, test } from 'vitest';
import { sideBySide } from '../../src/files/side-by-side.ts';

const groupOf = (item: string) => (/\d/.test(item) ? item.replace(/\D/g, '') : null);

test('groups stay together in their order, the rest is spread between them, nothing is lost', () => {
  const items = ['x', 'a1', 'a2', 'y', 'b1', 'b2', 'z', 'c1'];
  expect(sideBySide(items, groupOf).join(' ')).toBe('a1 b1 c1 x y a2 b2 z');
});

test('without groups everything stays as it was', () => {
  expect(sideBySide(['x', 'y'], groupOf)).toEqual(['x', 'y']);
  expect(sideBySide([], groupOf)).toEqual([]);
});
