import { expect, test } from 'vitest';
import { halfBeforeFirstCheck } from '../../../src/analysis/caveats/half-before-first-check.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { makeCount, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

/** Two jars of 50 seeds with 40 up on day 14; how many were on day 3. */
const told = (measure: Measure, ...first: readonly number[]) => {
  const sowings = first.map((_, index) => makeSowing(`j${index + 1}`, 'jar'));
  const counts = sowings.flatMap(({ id }, index) => [makeCount(id, 3, first[index] ?? 0), makeCount(id, 14, 40)]);
  const trial = makeTrial({ sowings, counts });
  return halfBeforeFirstCheck(trial, [resultOf(trial, { measure, days: { leek: 14 } })]);
};

test('20 of 40 were up at the first check in one jar', () => {
  expect(told('t50', 20, 19)).toMatchObject([
    { weight: 'note', lot: 'leek', treatment: 'jar', evidence: { day: 3, portion: 0.5, units: ['j1'] } },
  ]);
  expect(told('t50', 19, 19)).toEqual([]);
});

test('a spread needs the first quarter', () => {
  expect(told('spread', 10, 9)).toMatchObject([{ evidence: { portion: 0.25, units: ['j1'] } }]);
  expect(told('spread', 9, 9)).toEqual([]);
});

test('a mean time takes every seed at the check that found it', () => {
  expect(told('mgt', 30, 30)).toEqual([]);
});

test('trays of one batch are looked at together', () => {
  const sowings = ['j1', 'j2'].map((id) => makeSowing(id, 'jar', { batch: 'J1' }));
  const counts = [makeCount('j1', 3, 30), makeCount('j2', 3, 5), makeCount('j1', 14, 40), makeCount('j2', 14, 40)];
  const trial = makeTrial({ sowings, counts });
  const values = resultOf(trial)
    .values.slice(1)
    .map((value) => ({ ...value, unit: 'J1', sowings: ['j1', 'j2'] }));
  expect(halfBeforeFirstCheck(trial, [resultOf(trial, { measure: 't50', values })])).toEqual([]);
});
