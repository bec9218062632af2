import { expect, test } from 'vitest';
import { breakable } from '../../src/print/breakable.ts';

test.each([
  ['short words stay', 'short words stay'],
  ['abcdefghijklmnopqrstuvwxyz', 'abcdefghij|klmnopqrst|uvwxyz'],
  ['https://example.org/trials/a-long-name/', 'https://example.org/trials/a-long-name/'],
  [`a ${'🌱'.repeat(25)}`, `a ${'🌱'.repeat(10)}|${'🌱'.repeat(10)}|${'🌱'.repeat(5)}`],
])('%j may be cut as %j', (text, expected) => {
  expect(breakable(text).replaceAll('\u200B', '|')).toBe(expected);
});
