import { expect, test } from 'vitest';
import { cohensH } from '../../src/statistics/cohens-h.ts';
import { oddsRatio } from '../../src/statistics/odds-ratio.ts';
import { pearsonTwoByTwo } from '../../src/statistics/pearson-two-by-two.ts';
import { riskRatio } from '../../src/statistics/risk-ratio.ts';
import reference from '../reference/r/proportions.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';
import { expectCloseOrNull } from '../support/close-or-null.ts';

const a = { count: 41, seeds: 50 };
const b = { count: 30, seeds: 48 };

test.each(reference.twoByTwo)('$x1/$n1 against $x2/$n2: chi-square and effect sizes match R', (expected) => {
  const { x1, n1, x2, n2 } = expected;
  const [first, second] = [
    { count: x1, seeds: n1 },
    { count: x2, seeds: n2 },
  ];
  expectClose(pearsonTwoByTwo(first, second), expected.statistic);
  expectCloseOrNull(oddsRatio(first, second).ratio, expected.oddsRatio);
  expectCloseOrNull(riskRatio(x1 / n1, x2 / n2), expected.riskRatio);
  expectClose(cohensH(x1 / n1, x2 / n2), expected.cohensH);
});

test('swapping the groups turns the ratios over and keeps chi-square', () => {
  expectClose(pearsonTwoByTwo(b, a), pearsonTwoByTwo(a, b));
  expectClose(oddsRatio(b, a).ratio, 1 / (oddsRatio(a, b).ratio ?? NaN));
  expectClose(riskRatio(0.6, 0.8), 1 / (riskRatio(0.8, 0.6) ?? NaN));
  expectClose(cohensH(0.6, 0.8), -cohensH(0.8, 0.6));
});

test('the odds ratio says when half a count was added', () => {
  expect(oddsRatio(a, b).halfAdded).toBe(false);
  expect(oddsRatio({ count: 50, seeds: 50 }, b)).toEqual({ ratio: (50.5 * 18.5) / (0.5 * 30.5), halfAdded: true });
});

test('there is no ratio where nothing, or everything, came up in both', () => {
  const [none, all] = [
    { count: 0, seeds: 20 },
    { count: 20, seeds: 20 },
  ];
  expect(oddsRatio(none, none)).toEqual({ ratio: null, halfAdded: false });
  expect(oddsRatio(all, all)).toEqual({ ratio: null, halfAdded: false });
  expect(riskRatio(0, 0.4)).toBeNull();
  expect(riskRatio(0.4, 0)).toBeNull();
  expect([pearsonTwoByTwo(none, none), pearsonTwoByTwo(all, all)]).toEqual([0, 0]);
});

test('Cohen’s h runs from −π to π', () => {
  expect(cohensH(1, 0)).toBe(Math.PI);
  expect(cohensH(0, 1)).toBe(-Math.PI);
});

test('each refuses what is no count or proportion', () => {
  expect(() => pearsonTwoByTwo({ count: 3, seeds: 2 }, b)).toThrow(
    'pearsonTwoByTwo needs a count out of a number of seeds, got 3 of 2',
  );
  expect(() => oddsRatio(a, { count: -1, seeds: 2 })).toThrow('got -1 of 2');
  expect(() => riskRatio(1.2, 0.5)).toThrow('got 1.2 and 0.5');
  expect(() => cohensH(0.5, NaN)).toThrow('got 0.5 and NaN');
});
