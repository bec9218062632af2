import { expect, test } from 'vitest';
import { coarseChecks } from '../../../src/analysis/caveats/coarse-checks.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { makeCount, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

/** One jar; germinated on days 3, 6, 10 and 14. */
const told = (measure: Measure, ...germinated: readonly number[]) => {
  const counts = germinated.map((count, check) => makeCount('j1', [3, 6, 10, 14][check] ?? NaN, count));
  const trial = makeTrial({ sowings: [makeSowing('j1', 'jar')], counts });
  return coarseChecks(trial, [resultOf(trial, { measure, days: { leek: 14 } })]);
};

test('more than 0.6 came up in the gap that holds half', () => {
  expect(told('t50', 4, 29, 38, 40)).toMatchObject([
    { weight: 'note', lot: 'leek', treatment: 'jar', evidence: { from: 3, to: 6, percent: 62.5 } },
  ]);
  expect(told('t50', 30, 34, 38, 40)).toMatchObject([{ evidence: { from: 0, to: 3, percent: 75 } }]);
});

test('0.6 and less is not coarse', () => {
  expect(told('t50', 4, 28, 38, 40)).toEqual([]);
  expect(told('mgt', 4, 28, 38, 40)).toEqual([]);
  expect(told('mgt', 4, 29, 38, 40)).toHaveLength(1);
});

test('germination by a day is not about gaps, and what did not come up has none', () => {
  expect(told('germination', 30, 34, 38, 40)).toEqual([]);
  expect(told('t50', 0, 0, 0, 0)).toEqual([]);
});
