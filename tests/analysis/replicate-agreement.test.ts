import { expect, test } from 'vitest';
import { replicateAgreement } from '../../src/analysis/replicate-agreement.ts';
import { expectClose } from '../support/close.ts';
import { r } from '../support/r.ts';

const units = (seeds: number, ...counts: number[]) => counts.map((count) => ({ count, seeds }));
const range = (...group: { count: number; seeds: number }[]) => replicateAgreement([group]).ranges[0];

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

test('six pairs of sowings that agree to the seed are more alike than chance (R pchisq)', async () => {
  const alike = replicateAgreement([units(50, 40, 40, 41, 41), units(50, 30, 30, 30, 31)]).alike;
  const [statistic = NaN, p = NaN] = await r(
    'x <- function(k, n) sum((k - n*sum(k)/(n*length(k)))^2/(n*mean(k/n)*(1-mean(k/n)))); s <- x(c(40,40,41,41), 50) + x(c(30,30,30,31), 50); c(s, pchisq(s, 6))',
  );
  expect(alike?.df).toBe(6);
  expectClose(alike?.phi, statistic / 6);
  expectClose(alike?.p, p);
});

test('whether sowings are too alike cannot be told below 4 degrees of freedom, or from few seeds', () => {
  expect(replicateAgreement([units(50, 40, 40), units(50, 30, 30, 30)]).alike).toBeNull();
  expect(replicateAgreement([units(50, 48, 48, 48, 48, 48), units(50, 30, 30, 30)]).alike).toBeNull();
  expect(replicateAgreement([units(50, 45, 45, 45, 45, 45)]).alike).not.toBeNull();
});
