import { expect, test } from 'vitest';
import { addYears } from '../../../src/trial/text/add-years.ts';

test.each([
  ['2023-11-04', 0, '2023-11-04'],
  ['2023-11-04', 1, '2024-11-03'], // 365 days, of which one is 29 February
  ['2023-11-04', 4, '2027-11-04'],
  ['2024-02-29', 0.5, '2024-08-30'],
])('%s and %d years of storage is %s', (date, years, expected) => {
  expect(addYears(date, years)).toBe(expected);
});
