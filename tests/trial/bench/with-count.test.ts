import { expect, test } from 'vitest';
import { checksOfSowing } from '../../../src/trial/bench/checks-of-sowing.ts';
import { typedCount } from '../../../src/trial/bench/typed-count.ts';
import { counted, makeBenchTrial } from './make-bench.ts';

const totals = (...typed: Parameters<typeof counted>[1][]) =>
  checksOfSowing(counted(makeBenchTrial(), ...typed).records, 's1').map(({ germinated }) => germinated);
const totalsOfNew = (...typed: Parameters<typeof counted>[1][]) =>
  checksOfSowing(counted(makeBenchTrial({ counts: 'new' }), ...typed).records, 's1').map(
    ({ germinated }) => germinated,
  );

test('totals stand as they were typed, whatever stands on other days', () => {
  expect(totals(['s1', 8, 10], ['s1', 5, 3], ['s1', 11, 12])).toEqual([3, 10, 12]);
  expect(totals(['s1', 5, 3], ['s1', 8, 10], ['s1', 5, 12])).toEqual([12, 10]);
});

test('new ones add up, and a check that was missed leaves the sum alone', () => {
  expect(totalsOfNew(['s1', 5, 3], ['s1', 8, 'NC'], ['s1', 11, 4])).toEqual([3, null, 7]);
});

test('changing the new ones of an earlier day moves later totals along: their new ones stay as typed', () => {
  expect(totalsOfNew(['s1', 5, 3], ['s1', 8, 4], ['s1', 5, 5])).toEqual([5, 9]);
  expect(totalsOfNew(['s1', 5, 3], ['s1', 8, 4], ['s1', 5, 'NC'])).toEqual([null, 4]);
  expect(totalsOfNew(['s1', 5, 3], ['s1', 8, 4], ['s1', 5, null])).toEqual([4]);
  expect(totalsOfNew(['s1', 8, 4], ['s1', 5, 3])).toEqual([3, 7]);
});

test('other sowings are left alone', () => {
  const { records } = counted(makeBenchTrial({ counts: 'new' }), ['s1', 5, 3], ['s2', 8, 4], ['s1', 5, 9]);
  expect(checksOfSowing(records, 's2').map(({ germinated }) => germinated)).toEqual([4]);
});

test('a check is shown in the way it is counted', () => {
  const { records } = counted(makeBenchTrial(), ['s1', 5, 3], ['s1', 8, 'NC'], ['s1', 11, 7]);
  expect([5, 8, 11, 14].map((day) => typedCount(records, 's1', day, 'cumulative'))).toEqual([3, 'NC', 7, null]);
  expect([5, 8, 11, 14].map((day) => typedCount(records, 's1', day, 'new'))).toEqual([3, 'NC', 4, null]);
});

test('a count taken out leaves nothing behind; zero is a count', () => {
  expect(counted(makeBenchTrial(), ['s1', 5, 0]).records.checks).toMatchObject({ '["s1",5]': { germinated: 0 } });
  expect(counted(makeBenchTrial(), ['s1', 5, 3], ['s1', 5, null]).records.checks).toEqual({});
});
