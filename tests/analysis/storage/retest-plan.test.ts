import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { retestPlan } from '../../../src/analysis/storage/retest-plan.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const storage = { started: '2024-03-01', tests: [5, 0, 1, 2, 3.5], left: { packet: 3, jar: 8 } };
const series = storageTrial(
  { start: alike({ 0: 48 }, 3), packet: alike({ 1: 44, 2: 20 }), jar: alike({ 1: 46, 2: 47 }) },
  { storage },
);
const planOf = (trial: typeof series, level: number | null) => retestPlan(trial, analyse(trial), level);

test('the next tests with their dates, and what is left', () => {
  const plan = planOf(series, null);
  expect(plan?.tests).toEqual([
    { years: 3.5, date: '2027-08-31' },
    { years: 5, date: '2029-03-01' },
  ]);
  expect(plan?.left).toEqual([
    { treatment: 'packet', left: 3, opened: 2 },
    { treatment: 'jar', left: 8, opened: 2 },
  ]);
  expect(plan?.levels).toEqual([]);
});

test('the last test is held against the level of the group', () => {
  const levels = planOf(series, 85)?.levels;
  expect(
    levels?.map(({ treatment, stored, initial, last, level, side }) => [treatment, stored, initial, last, level, side]),
  ).toEqual([
    ['packet', 2, 96, 40, 81.6, 'below'],
    ['jar', 2, 96, 94, 81.6, 'above'],
  ]);
  const near = storageTrial(
    { start: alike({ 0: 48 }, 3), jar: alike({ 1: 42 }) },
    { storage, treatments: series.treatments },
  );
  expect(planOf(near, 85)?.levels.map(({ side }) => side)).toEqual(['unclear']);
});

test('without a start, a date or a plan only what is known is told', () => {
  const undated = { ...series, storage: { ...storage, started: null, left: {} } };
  expect(planOf(undated, null)?.tests[0]).toEqual({ years: 3.5, date: null });
  const unplanned = { ...series, storage: null };
  expect(planOf(unplanned, null)).toBeNull();
  expect(planOf(unplanned, 85)?.levels).toHaveLength(2);
  const late = storageTrial({ jar: alike({ 1: 46, 2: 40 }) }, { storage: null });
  expect(planOf(late, 85)).toBeNull();
  expect(planOf(germinationTrial({ packet: [[40, 50]], jar: [[41, 50]] }), 85)).toBeNull();
});
