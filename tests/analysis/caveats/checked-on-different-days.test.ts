import { expect, test } from 'vitest';
import { checkedOnDifferentDays } from '../../../src/analysis/caveats/checked-on-different-days.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { makeCount, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

type Checks = readonly (readonly [day: number, germinated: number | null])[];
const told = (packet: Checks, jar: Checks, measure: Measure = 't50') => {
  const sowings = ['p1', 'p2', 'j1', 'j2'].map((id) => makeSowing(id, id.startsWith('p') ? 'packet' : 'jar'));
  const counts = sowings.flatMap(({ id }) =>
    (id === 'j2' ? jar : packet).map(([day, count]) => makeCount(id, day, count)),
  );
  const trial = makeTrial({ sowings, counts });
  return checkedOnDifferentDays(trial, [resultOf(trial, { measure, days: { leek: 14 } })]);
};
const checks: Checks = [
  [5, 10],
  [8, 30],
  [14, 45],
];

test('one jar that missed a check', () => {
  expect(
    told(checks, [
      [5, 10],
      [14, 45],
    ]),
  ).toMatchObject([
    {
      weight: 'serious',
      treatment: 'jar',
      evidence: {
        days: { treatment: [5, 8, 14], control: [5, 8, 14] },
        missed: [{ sowing: 'j2', treatment: 'jar', days: [8] }],
      },
    },
  ]);
  expect(
    told(checks, [
      [5, 10],
      [8, null],
      [14, 45],
    ]),
  ).toHaveLength(1);
});

test('all on the same days, or a check missed while nothing happened', () => {
  expect(told(checks, checks)).toEqual([]);
  expect(
    told(checks, [
      [5, 45],
      [14, 45],
    ]),
  ).toEqual([]);
  expect(
    told(checks, [
      [8, 0],
      [14, 45],
    ]),
  ).toEqual([]);
  expect(
    told(checks, [
      [5, 10],
      [8, 50],
    ]),
  ).toEqual([]);
});

test('a missed first or last check counts', () => {
  expect(
    told(checks, [
      [8, 30],
      [14, 45],
    ]),
  ).toHaveLength(1);
  expect(
    told(checks, [
      [5, 10],
      [8, 45],
    ]),
  ).toHaveLength(1);
});

test('germination by a day does not depend on the checks before', () => {
  expect(
    told(
      checks,
      [
        [5, 10],
        [14, 45],
      ],
      'germination',
    ),
  ).toEqual([]);
});
