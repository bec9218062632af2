import { expect, test } from 'vitest';
import { isolated } from '../../src/print/isolated.ts';

test.each([
  ['plain text: 8', 'plain text: 8'],
  ['מושרה 24 שעות: 8 more', '<מושרה 24 שעות>: 8 more'],
  ['יבש (ללא השריה) (control)', '<יבש (ללא השריה)> (control)'],
  ['a יבש, מושרה b', 'a <יבש>, <מושרה> b'],
  ['هل تنبت البذور؟', '<هل تنبت البذور؟>'],
])('%s', (text, expected) => {
  expect(isolated(text).replaceAll('\u2068', '<').replaceAll('\u2069', '>')).toBe(expected);
});
