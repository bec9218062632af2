import { expect, test } from 'vitest';
import { checksUntil } from '../../../src/analysis/units/checks-until.ts';

const checks = [
  { day: 5, total: 20 },
  { day: 8, total: 40 },
  { day: 14, total: 42 },
];

test('checks end at the day', () => {
  expect(checksUntil(checks, 50, 8, false)).toEqual(checks.slice(0, 2));
});

test('a missed check is neither carried forward nor zero', () => {
  expect(checksUntil(checks, 50, 11, false)).toBeNull();
  expect(checksUntil(checks, 50, 3, true)).toBeNull();
});

test('a missed check is known where all seeds had germinated before', () => {
  expect(checksUntil(checks, 40, 11, false)).toEqual([...checks.slice(0, 2), { day: 11, total: 40 }]);
});

test('the last earlier count stands in only where it is asked for', () => {
  expect(checksUntil(checks, 50, 11, true)?.at(-1)).toEqual({ day: 11, total: 40 });
});
