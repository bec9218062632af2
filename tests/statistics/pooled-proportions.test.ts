import { expect, test } from 'vitest';
import { pooledProportions } from '../../src/statistics/pooled-proportions.ts';
import reference from '../reference/r/dispersion.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

const plain = { used: 1, dfUsed: 1000 };
const lot = (treated: number, nt: number, control: number, nc: number) => ({
  treated: { count: treated, seeds: nt },
  control: { count: control, seeds: nc },
});

test.each(reference.pooled.map((expected, index) => ({ index, ...expected })))('case $index matches R', (expected) => {
  const found = pooledProportions(expected.lots, expected);
  expectClose(found.difference, expected.difference);
  expectClose(found.se, expected.se);
  expectClose(found.p, expected.p);
  if (expected.lotsDiffer.statistic < 1e-20) expect(found.lotsDiffer.statistic).toBeLessThan(1e-20);
  else expectClose(found.lotsDiffer.statistic, expected.lotsDiffer.statistic);
  expect(found.lotsDiffer.df).toEqual(expected.lotsDiffer.df);
  expectClose(found.lotsDiffer.p, expected.lotsDiffer.p);
});

// Mantel–Haenszel risk differences by R (metafor); data from R’s UCBAdmissions and Agresti’s multicentre trial.
// The published standard errors (0.0146195 and 0.0484959) use p without the ½, so they are met nearly, not exactly.
test('admissions at Berkeley: −0.0184252', () => {
  const lots = [
    lot(512, 825, 89, 108),
    lot(353, 560, 17, 25),
    lot(120, 325, 202, 593),
    lot(138, 417, 131, 375),
    lot(53, 191, 94, 393),
    lot(22, 373, 24, 341),
  ];
  const found = pooledProportions(lots, plain);
  expectClose(found.difference, -0.0184252, 3e-6);
  expectClose(found.se, 0.0146195, 0.01);
});

test('multicentre cream trial: 0.1298705', () => {
  const lots = [
    lot(11, 36, 10, 37),
    lot(16, 20, 22, 32),
    lot(14, 19, 7, 19),
    lot(2, 16, 1, 17),
    lot(6, 17, 0, 12),
    lot(1, 11, 0, 10),
    lot(1, 5, 1, 9),
    lot(4, 6, 6, 7),
  ];
  const found = pooledProportions(lots, plain);
  expectClose(found.difference, 0.1298705, 3e-7);
  expectClose(found.se, 0.0484959, 0.1);
});

test('lots of one and the same result give that result, surer, and do not differ', () => {
  const one = lot(90, 100, 80, 100);
  const [two, four] = [pooledProportions([one, one], plain), pooledProportions([one, one, one, one], plain)];
  expectClose(two.difference, 0.1);
  expectClose(two.se, four.se * Math.SQRT2);
  expect(two.lotsDiffer.statistic).toBeLessThan(1e-20);
  expectClose(two.lotsDiffer.p, 1);
});

test('the order of lots does not matter; swapping the treatments turns the sign', () => {
  const lots = [lot(90, 100, 80, 100), lot(20, 50, 25, 60), lot(10, 10, 3, 10)];
  const found = pooledProportions(lots, plain);
  expectClose(pooledProportions([...lots].reverse(), plain).p, found.p);
  expectClose(
    pooledProportions(
      lots.map(({ treated, control }) => ({ treated: control, control: treated })),
      plain,
    ).difference,
    -found.difference,
  );
});

test('more spread widens the error and hides differences between lots', () => {
  const lots = [lot(90, 100, 60, 100), lot(20, 50, 25, 50)];
  const [sure, unsure] = [pooledProportions(lots, plain), pooledProportions(lots, { used: 4, dfUsed: 1000 })];
  expectClose(unsure.se, 2 * sure.se);
  expectClose(unsure.lotsDiffer.statistic, sure.lotsDiffer.statistic / 4);
});

test('refuses one lot and a dispersion below 1', () => {
  expect(() => pooledProportions([lot(1, 2, 1, 2)], plain)).toThrow('two lots or more, got 1');
  expect(() => pooledProportions([lot(1, 2, 1, 2), lot(1, 2, 1, 2)], { used: 0.5, dfUsed: 2 })).toThrow('got 0.5 on 2');
});
