import { expect, test } from 'vitest';
import { columnShares } from '../../../src/print/summary/column-shares.ts';

const LONG = 'Soaked overnight in rain water, rinsed, and dried on a sieve';

test('columns have the room of their longest cells', () => {
  const [label = 0, number = 0] = columnShares(['Treatment', 'Units'], [['Sealed paper packet', '4 trays']]);
  expect(label / number).toBeGreaterThan(2);
  expect(label / number).toBeLessThan(3);
});

test('a heading does not widen its column by more than its longest word', () => {
  const short = columnShares(['Interval of the difference'], [['3 to 4']]);
  expect(short).toEqual(columnShares(['difference'], [['3 to 4']]));
});

test('a long label gives way to many short numbers, and all together fit a line', () => {
  const numbers = ['101 of 200', '43.4 to 57.6', '13 more per 100', 'came up more'];
  const head = ['Treatment', 'Count', 'Interval', 'Difference', 'Finding'];
  const [label, ...others] = columnShares(head, [[LONG, ...numbers]]);
  const [, ...roomy] = columnShares(head, [['Dry', ...numbers]]);
  expect(others).toEqual(roomy);
  expect([label, ...others].reduce<number>((sum, one) => sum + (one ?? 0), 0)).toBeLessThanOrEqual(66);
});

test('no word is cut, even where that is too wide', () => {
  const word = 'x'.repeat(80);
  const [wide = 0, narrow = 0] = columnShares(['A', 'B'], [[word, LONG]]);
  expect(wide).toBeGreaterThan(30);
  expect(narrow).toBeGreaterThan(3);
});

test('a table without rows has columns', () => {
  expect(columnShares(['A', 'Bread'], [])).toHaveLength(2);
});
