import { expect, test } from 'vitest';
import { replicateAgreement } from '../../src/analysis/replicate-agreement.ts';
import { expectClose } from '../support/close.ts';

const units = (seeds: number, ...counts: number[]) => counts.map((count) => ({ count, seeds }));
const range = (...group: { count: number; seeds: number }[]) => replicateAgreement(group);

test('four sowings of 100 are held against the table: at 85 % a range of 14 is luck, 15 is not', () => {
  expect(range(...units(100, 78, 85, 85, 92))).toMatchObject({ range: 14, limit: 14, rule: 'table', isBeyond: false });
  expect(range(...units(100, 77, 85, 86, 92))).toMatchObject({ range: 15, limit: 14, rule: 'table', isBeyond: true });
});

test('two sowings of 100 at 99 % have no row in the table', () => {
  expect(range(...units(100, 99, 98))?.rule).toBe('formula');
  expect(range(...units(100, 97, 96))?.rule).toBe('table');
});

test('four sowings of 50 at 85 %: 20.12 points (R, sources.md 1.7)', () => {
  const agreement = range(...units(50, 42, 43, 42, 43));
  expectClose(agreement?.limit, 20.12, 1e-3);
  expect(agreement?.rule).toBe('formula');
});

test('unequal sowings are held against what the smallest allows', () => {
  expect(range({ count: 17, seeds: 20 }, { count: 85, seeds: 100 })?.limit).toBeGreaterThan(
    range(...units(100, 85, 85))?.limit ?? NaN,
  );
});

test('no range for a single sowing, or where all or none came up', () => {
  expect(range(...units(50, 40))).toBeNull();
  expect(range(...units(50, 50, 50))).toBeNull();
  expect(range(...units(50, 0, 0))).toBeNull();
});
