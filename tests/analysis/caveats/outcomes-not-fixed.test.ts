import { expect, test } from 'vitest';
import { outcomesNotFixed } from '../../../src/analysis/caveats/outcomes-not-fixed.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { makePlan } from '../../support/make-plan.ts';
import { germinationTrial, makeOutcome } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] }, { fixedBeforehand: null });
const told = (parts: Partial<Trial>) => outcomesNotFixed({ ...trial, ...parts }, [resultOf(trial)]);
const reason = (parts: Partial<Trial>) => told(parts).map(({ evidence }) => evidence.reason);

test('nothing fixed is a caution on the whole trial', () => {
  expect(told({})).toMatchObject([
    { weight: 'caution', outcome: null, evidence: { reason: 'nothing-fixed', fixed: null, firstCount: '2026-04-18' } },
  ]);
});

test('fixed before the first count', () => {
  expect(reason({ fixedBeforehand: '2026-04-17' })).toEqual([]);
  expect(reason({ plan: makePlan(trial) })).toEqual([]);
});

test('fixed on the day of the first count or later, edited, or no outcome listed', () => {
  expect(reason({ fixedBeforehand: '2026-04-18' })).toEqual(['fixed-too-late']);
  expect(reason({ plan: makePlan(trial, {}, { fixed: '2026-04-18' }) })).toEqual(['fixed-too-late']);
  expect(reason({ plan: makePlan(trial, {}, { computedDigest: 'other' }) })).toEqual(['plan-edited']);
  expect(reason({ outcomes: [], fixedBeforehand: '2026-04-01' })).toEqual(['none-listed']);
});

test('an outcome added to the plan is told with that outcome, an altered one is a change of plan', () => {
  const two = [makeOutcome(), makeOutcome({ id: 'early', day: 5, primary: false })];
  const results = [resultOf(trial), resultOf(trial, { outcome: 'early', day: 5 })];
  expect(outcomesNotFixed({ ...trial, outcomes: two, plan: makePlan(trial) }, results)).toMatchObject([
    { outcome: 'early', evidence: { reason: 'not-in-plan', fixed: '2026-04-01' } },
  ]);
  expect(reason({ outcomes: [makeOutcome({ day: 10 })], plan: makePlan(trial) })).toEqual([]);
});
