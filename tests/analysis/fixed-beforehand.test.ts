import { expect, test } from 'vitest';
import { firstCountDate } from '../../src/analysis/first-count-date.ts';
import { fixedBeforehand } from '../../src/analysis/fixed-beforehand.ts';
import { fixedOn } from '../../src/analysis/fixed-on.ts';
import { makePlan } from '../support/make-plan.ts';
import { germinationTrial, makeCount, makeOutcome, makeTrial } from '../support/make-trial.ts';

// Sown on 4 April 2026; the first count is on day 5, 9 April.
const trial = germinationTrial(
  { packet: [[40, 50]], jar: [[45, 50]] },
  { outcomes: [makeOutcome({ matters: 10 })], fixedBeforehand: null },
  { day: 5 },
);
const germination = makeOutcome({ matters: 10 });
const weighing = {
  lot: 'leek',
  treatment: 'jar',
  stage: 'after' as const,
  mass: 9,
  container: null,
  repeat: null,
  scaleStep: null,
  batch: null,
  date: '2026-03-20',
  line: 2,
};

test('the first count is the first check after sowing that saw something', () => {
  expect(firstCountDate(trial)).toBe('2026-04-09');
  const blank = [makeCount('leek-jar-1', 0, 0), makeCount('leek-jar-1', 3, null), makeCount('leek-jar-1', 7.5, 2)];
  expect(firstCountDate({ ...trial, counts: blank })).toBe('2026-04-11');
  expect(firstCountDate(makeTrial())).toBeNull();
});

test('a sowing of its own date counts from there, and a month has its end', () => {
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, sown: '2026-02-27' }));
  expect(firstCountDate({ ...trial, sowings })).toBe('2026-03-04');
});

test('measurements and weighings after treatment are looks as well', () => {
  const height = { sowing: 'leek-jar-1', day: 2, plant: '1', values: { height: 4 }, line: 2 };
  expect(firstCountDate({ ...trial, measurements: [height] })).toBe('2026-04-06');
  expect(firstCountDate({ ...trial, measurements: [{ ...height, values: { height: null } }] })).toBe('2026-04-09');
  expect(firstCountDate({ ...trial, weighings: [weighing] })).toBe('2026-03-20');
  expect(firstCountDate({ ...trial, weighings: [{ ...weighing, stage: 'before' }] })).toBe('2026-04-09');
  expect(firstCountDate({ ...trial, weighings: [{ ...weighing, date: null }] })).toBe('2026-04-04');
});

test('a plan fixed before the first count fixes the outcomes it holds', () => {
  const planned = { ...trial, plan: makePlan(trial) };
  expect(fixedOn(planned)).toEqual({ date: '2026-04-01', how: 'plan' });
  expect(fixedBeforehand(planned, germination)).toBe(true);
});

test('the day of the first count is too late, the day before is not', () => {
  const fixed = (date: string) =>
    fixedBeforehand({ ...trial, plan: makePlan(trial, {}, { fixed: date }) }, germination);
  expect(fixed('2026-04-08')).toBe(true);
  expect(fixed('2026-04-09')).toBe(false);
});

test('an edited plan fixes nothing', () => {
  const plan = makePlan(trial, {}, { computedDigest: 'c3d4' });
  expect(fixedOn({ ...trial, plan })).toBeNull();
  expect(fixedOn({ ...trial, plan, fixedBeforehand: '2026-04-01' }), 'nor does a date that is stated').toBeNull();
});

test('an outcome that the plan does not hold as it is now was not fixed', () => {
  const changed = (change: object) =>
    fixedBeforehand({ ...trial, plan: makePlan(trial, { outcomes: [{ ...germination, ...change }] }) }, germination);
  expect(changed({})).toBe(true);
  expect(changed({ id: 'other' })).toBe(false);
  expect(changed({ matters: 5 })).toBe(false);
  expect(changed({ matters: null })).toBe(false);
  expect(changed({ day: 10 })).toBe(false);
  expect(changed({ measure: 'maguire' })).toBe(false);
});

test('a statement by the authors counts, if dated before the first count', () => {
  expect(fixedOn({ ...trial, fixedBeforehand: '2026-04-08' })).toEqual({ date: '2026-04-08', how: 'stated' });
  expect(fixedBeforehand({ ...trial, fixedBeforehand: '2026-04-08' }, germination)).toBe(true);
  expect(fixedBeforehand({ ...trial, fixedBeforehand: '2026-04-09' }, germination)).toBe(false);
  expect(fixedBeforehand(trial, germination)).toBe(false);
});

test('a plan without a digest is a statement too', () => {
  const plan = makePlan(trial, {}, { digest: null });
  expect(fixedOn({ ...trial, plan })).toEqual({ date: '2026-04-01', how: 'stated' });
});

test('outcomes that no one listed were not fixed, whatever was stated', () => {
  expect(fixedBeforehand({ ...trial, outcomes: [], fixedBeforehand: '2026-04-01' }, germination)).toBe(false);
});

test('before anything was counted, a plan is in time', () => {
  const growing = { ...trial, counts: [], plan: makePlan(trial, {}, { fixed: '2026-05-01' }) };
  expect(fixedBeforehand(growing, germination)).toBe(true);
});
