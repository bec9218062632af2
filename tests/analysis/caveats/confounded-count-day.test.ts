import { expect, test } from 'vitest';
import { confoundedCountDay } from '../../../src/analysis/caveats/confounded-count-day.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import { makeCount, makeOutcome, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const sowings = ['p1', 'p2', 'j1', 'j2'].map((id) => makeSowing(id, id.startsWith('p') ? 'packet' : 'jar'));
/** Checks by sowing: `{ p1: [[5, 20], [14, 45]] }`. */
const told = (
  checks: Readonly<Record<string, readonly (readonly [day: number, germinated: number])[]>>,
  parts: Partial<Result> = {},
) => {
  const counts = Object.entries(checks).flatMap(([id, rows]) => rows.map(([day, count]) => makeCount(id, day, count)));
  const trial = makeTrial({ sowings, counts });
  return confoundedCountDay(trial, [resultOf(trial, { days: { leek: 14 }, ...parts })]);
};
const early = [
  [5, 20],
  [12, 45],
] as const;
const late = [
  [5, 20],
  [14, 45],
] as const;
const unchecked = ['p1', 'p2'].map((sowing) => ({ sowing, reason: 'not-checked' as const, what: null }));

test('packets last checked on day 12 and jars on day 14', () => {
  expect(told({ p1: early, p2: early, j1: late, j2: late }, { leftOut: unchecked })).toMatchObject([
    { weight: 'serious', treatment: 'jar', evidence: { values: { treatment: [14], control: [12] } } },
  ]);
});

test('all checked on day 14 are alike, however often jars were checked afterwards', () => {
  const longer = [...late, [21, 46]] as const;
  expect(told({ p1: late, p2: late, j1: longer, j2: longer })).toEqual([]);
});

test('an outcome that names no day is read on the last day shared, which is no cure', () => {
  const counts = sowings.flatMap(({ id }) => [makeCount(id, 5, 20), makeCount(id, id.startsWith('p') ? 12 : 14, 45)]);
  const trial = makeTrial({ sowings, counts, outcomes: [makeOutcome({ day: null })] });
  expect(confoundedCountDay(trial, [resultOf(trial, { days: { leek: 5 } })])).toHaveLength(1);
  const named = { ...trial, outcomes: [makeOutcome({ day: 5 })] };
  expect(confoundedCountDay(named, [resultOf(trial, { days: { leek: 5 } })])).toEqual([]);
});

test('one packet checked on day 14 is enough', () => {
  expect(told({ p1: late, p2: early, j1: late, j2: late }, { leftOut: unchecked.slice(1) })).toEqual([]);
});

test('trays in which every seed had come up need no further check', () => {
  const full = [
    [5, 20],
    [12, 50],
  ] as const;
  expect(told({ p1: full, p2: full, j1: late, j2: late })).toEqual([]);
});

test('heights are not counted', () => {
  expect(told({ p1: early, p2: early, j1: late, j2: late }, { measure: 'trait' })).toEqual([]);
});
