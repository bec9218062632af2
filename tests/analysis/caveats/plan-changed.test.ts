import { expect, test } from 'vitest';
import { planChanged } from '../../../src/analysis/caveats/plan-changed.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { makePlan } from '../../support/make-plan.ts';
import { germinationTrial, makeOutcome } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });
const told = (parts: Partial<Trial> = {}, result: Partial<Result> = {}) =>
  planChanged({ ...trial, ...parts }, [resultOf(trial, { days: { leek: 14 }, ...result })]);

test('followed to the letter', () => {
  expect(told({ plan: makePlan(trial) })).toEqual([]);
  expect(told()).toEqual([]);
});

test('another day is told with its outcome', () => {
  const plan = makePlan(trial, { outcomes: [{ id: 'germination', measure: 'germination', day: 12 }] });
  const changes = [{ what: 'outcomes.germination.day', planned: '12', done: '14' }];
  expect(told({ plan })).toMatchObject([
    { weight: 'caution', outcome: 'germination', lot: null, evidence: { changes } },
  ]);
});

test('what concerns more than one outcome is told with the trial', () => {
  const plan = makePlan(trial, {
    sowing: { container: 'tray', assignment: 'random-in-blocks', treated: 'each-sowing' },
  });
  expect(told({ plan })).toMatchObject([{ outcome: null, evidence: { changes: [{ what: 'sowing.assignment' }] } }]);
});

test('a day on which nothing was checked, so that another took its place', () => {
  expect(told({}, { days: { leek: 15 } })).toMatchObject([
    {
      outcome: 'germination',
      lot: 'leek',
      evidence: { changes: [{ what: 'outcomes.germination.day', planned: '14', done: '15' }] },
    },
  ]);
  expect(told({ outcomes: [makeOutcome({ day: null })] }, { days: { leek: 15 } })).toEqual([]);
});

test('sowings left out and outcomes added have caveats of their own', () => {
  const events = [{ day: 6, date: null, sowings: ['leek-jar-1'], what: 'dropped', action: 'left-out' as const }];
  const outcomes = [makeOutcome(), makeOutcome({ id: 'early', day: 5, primary: false })];
  expect(told({ events, outcomes, plan: makePlan(trial) })).toEqual([]);
});
