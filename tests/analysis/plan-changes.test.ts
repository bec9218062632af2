import { expect, test } from 'vitest';
import { planChanges } from '../../src/analysis/plan-changes.ts';
import { makePlan } from '../support/make-plan.ts';
import { germinationTrial, makeLot, makeOutcome, makeSowing, makeTreatment } from '../support/make-trial.ts';

const trial = germinationTrial({ packet: [[40, 50]], jar: [[45, 50]] }, { outcomes: [makeOutcome({ matters: 10 })] });
const changes = (copy: Readonly<Record<string, unknown>>, parts = {}) =>
  planChanges({ ...trial, ...parts, plan: makePlan(trial, copy) }).changes;

test('a trial without a plan has no changes from it', () => {
  expect(planChanges(trial)).toEqual({ fixed: null, changes: [] });
});

test('a trial that followed its plan has no changes, whatever way the plan was written', () => {
  expect(planChanges({ ...trial, plan: makePlan(trial) })).toEqual({ fixed: '2026-04-01', changes: [] });
  const otherwise = {
    question: '  Does the jar\n  keep seed better? ',
    scoring: { germinated: 'loop visible', blind: true, counts: 'cumulative' },
    outcomes: [
      { id: 'germination', measure: 'germination', day: { leek: 14 }, matters: '10', primary: true, pool: false },
    ],
  };
  expect(changes(otherwise)).toEqual([]);
});

test('an outcome may be altered, added and dropped', () => {
  const day = { id: 'germination', measure: 'germination', day: 10, matters: 5 };
  expect(changes({ outcomes: [day, { id: 'height', measure: 'trait', column: 'height' }] })).toEqual([
    { what: 'outcomes.germination.day', planned: '10', done: '14' },
    { what: 'outcomes.germination.matters', planned: '5', done: '10' },
    { what: 'outcomes.height', planned: 'height', done: null },
  ]);
  expect(changes({ outcomes: undefined })).toEqual([
    { what: 'outcomes.germination', planned: null, done: 'germination' },
  ]);
});

test('which outcome is primary may not change unnoticed', () => {
  const outcomes = [makeOutcome({ matters: 10 }), makeOutcome({ id: 'early', day: 5, primary: false })];
  const planned = [
    { id: 'early', measure: 'germination', day: 5 },
    { id: 'germination', measure: 'germination', day: 14, matters: 10 },
  ];
  expect(changes({ outcomes: planned }, { outcomes })).toEqual([
    { what: 'outcomes.early.primary', planned: 'yes', done: 'no' },
    { what: 'outcomes.germination.primary', planned: 'no', done: 'yes' },
  ]);
});

test('what is varied and the day of sowing are compared where the plan gave them', () => {
  expect(changes({ varies: 'soak', sown: '2026-04-02' }, { varies: 'storage', sown: '2026-04-04' })).toEqual([
    { what: 'sown', planned: '2026-04-02', done: '2026-04-04' },
    { what: 'varies', planned: 'soak', done: 'storage' },
  ]);
  expect(changes({}, { varies: 'storage', sown: '2026-04-04' })).toEqual([]);
});

test('days by lot are compared lot by lot', () => {
  const parts = { lots: [makeLot('leek'), makeLot('cress')], outcomes: [makeOutcome({ day: { leek: 14, cress: 6 } })] };
  const outcomes = [{ id: 'germination', measure: 'germination', day: 14 }];
  expect(changes({ outcomes, lots: ['leek', 'cress'] }, parts)).toEqual([
    { what: 'outcomes.germination.day', planned: '14', done: 'cress 6, leek 14' },
  ]);
});

test('question, lots, treatments, sowing and scoring are compared', () => {
  const copy = {
    question: 'Does it come up faster?',
    lots: ['onion'],
    treatments: [
      { id: 'packet', label: 'Paper packet', control: true, soak_hours: 6 },
      { id: 'bag', label: 'Paper bag' },
    ],
    sowing: { container: 'tray', assignment: 'random-in-blocks', treated: 'each-sowing', block: 'shelf' },
    scoring: { germinated: 'loop visible', blind: 'yes', days: [7, 14] },
  };
  expect(changes(copy)).toEqual([
    { what: 'lots.leek', planned: null, done: 'leek' },
    { what: 'lots.onion', planned: 'onion', done: null },
    { what: 'question', planned: 'Does it come up faster?', done: 'Does the jar keep seed better?' },
    { what: 'scoring.days', planned: '7, 14', done: null },
    { what: 'sowing.assignment', planned: 'random-in-blocks', done: 'random' },
    { what: 'sowing.block', planned: 'shelf', done: null },
    { what: 'treatments.bag', planned: 'Paper bag', done: null },
    { what: 'treatments.jar', planned: null, done: 'Sealed jar' },
    { what: 'treatments.packet.soak_hours', planned: '6', done: null },
  ]);
});

test('sowings may be added, dropped, re-assigned, sown with other seeds, moved to another block and left out', () => {
  const sowings = [
    { sowing: 'leek-packet-1', lot: 'leek', treatment: 'jar', seeds: 50, block: 'A' },
    { sowing: 'leek-jar-1', lot: 'leek', treatment: 'jar', seeds: 40 },
    { sowing: 'leek-jar-2', lot: 'leek', treatment: 'jar', seeds: 50 },
  ];
  const done = [...trial.sowings, makeSowing('extra', 'jar')];
  const events = [{ day: 6, date: null, sowings: ['extra'], what: 'dropped', action: 'left-out' as const }];
  expect(changes({ sowings }, { sowings: done, events })).toEqual([
    { what: 'sowings.extra', planned: null, done: 'extra' },
    { what: 'sowings.extra.left-out', planned: null, done: 'dropped' },
    { what: 'sowings.leek-jar-1.seeds', planned: '40', done: '50' },
    { what: 'sowings.leek-jar-2', planned: 'leek-jar-2', done: null },
    { what: 'sowings.leek-packet-1.block', planned: 'A', done: null },
    { what: 'sowings.leek-packet-1.treatment', planned: 'jar', done: 'packet' },
  ]);
});

test('mishaps that were kept in are no change from plan', () => {
  const events = [{ day: 6, date: null, sowings: ['leek-jar-1'], what: 'dropped', action: 'kept' as const }];
  expect(changes({}, { events })).toEqual([]);
});

test('a blind plan holds no treatments, but the seal of its key', () => {
  const sowings = trial.sowings.map(({ id, lot, seeds }) => ({ sowing: id, lot, seeds }));
  const key = (sha256: string) => ({ inputs: [{ file: 'key.csv', sha256, bytes: 20 }] });
  expect(changes({ sowings, key_sha256: 'k1' }, key('k1'))).toEqual([]);
  expect(changes({ sowings, key_sha256: 'k1' })).toEqual([]);
  expect(changes({ sowings, key_sha256: 'k1' }, key('k2'))).toEqual([
    { what: 'key_sha256', planned: 'k1', done: 'k2' },
  ]);
});

test('a plan edited after it was sealed is told', () => {
  const plan = makePlan(trial, {}, { digest: 'a1', computedDigest: 'b2' });
  expect(planChanges({ ...trial, plan }).changes).toEqual([{ what: 'digest', planned: 'a1', done: 'b2' }]);
});

test('the order of rows in the files makes no difference', () => {
  const parts = { treatments: trial.treatments.toReversed(), sowings: trial.sowings.toReversed() };
  const copy = { treatments: [makeTreatment('bag', { label: 'Bag' })], sowings: [] };
  expect(changes(copy, parts)).toEqual(changes(copy));
});
