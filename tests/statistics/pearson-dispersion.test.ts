import { expect, test } from 'vitest';
import { pearsonDispersion } from '../../src/statistics/pearson-dispersion.ts';
import reference from '../reference/r/dispersion.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

const units = (counts: readonly number[], seeds = 50) => counts.map((count) => ({ count, seeds }));

test.each(reference.pearson.map((expected, index) => ({ index, ...expected })))('case $index matches R', (expected) => {
  const { statistic, df, phi } = pearsonDispersion(expected.groups);
  if (expected.statistic < 1e-20) expect(statistic).toBe(0);
  else expectClose(statistic, expected.statistic);
  expect(df).toBe(expected.df);
  expectClose(phi, statistic / df);
});

// Snedecor & Cochran's soybeans (failures of 100 seeds, five plots a treatment), from memory; φ by R, whose glm
// stops at six digits (1.069159 as published, 1.0691563 when it is let run on).
test('soybean seed treatments: φ 1.069159', () => {
  const failures = [
    [8, 10, 12, 13, 11],
    [2, 6, 7, 11, 5],
    [4, 10, 9, 8, 10],
    [3, 5, 9, 10, 6],
    [9, 7, 5, 5, 3],
  ];
  const { df, phi } = pearsonDispersion(failures.map((counts) => units(counts, 100)));
  expect(df).toBe(20);
  expectClose(phi, 1.069159, 3e-6);
});

test('groups at 0 or 100 % and single units add nothing', () => {
  const some = [units([40, 45, 30]), units([20, 25])];
  const more = [...some, units([0, 0]), units([50, 50, 50]), units([17])];
  expect(pearsonDispersion(more)).toEqual(pearsonDispersion(some));
});

test('with nothing to learn from, φ is null', () => {
  expect(pearsonDispersion([units([50, 50]), units([0, 0])])).toEqual({ statistic: 0, df: 0, phi: null });
  expect(pearsonDispersion([units([37])])).toEqual({ statistic: 0, df: 0, phi: null });
  expect(pearsonDispersion([])).toEqual({ statistic: 0, df: 0, phi: null });
});

test('counting the seeds that stayed away gives the same', () => {
  const groups = [units([40, 45, 30]), units([20, 25])];
  const away = groups.map((group) => group.map(({ count, seeds }) => ({ count: seeds - count, seeds })));
  expectClose(pearsonDispersion(away).statistic, pearsonDispersion(groups).statistic);
});

test('refuses more germinated than sown', () => {
  expect(() => pearsonDispersion([units([51])])).toThrow(
    'pearsonDispersion needs a count out of a number of seeds, got 51 of 50',
  );
});
