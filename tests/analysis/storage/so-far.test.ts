import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { soFar } from '../../../src/analysis/storage/so-far.ts';
import { toldTrial } from '../../../src/archive/told-trial.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { germinationTrial, makeCount } from '../../support/make-trial.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const years = { 1: 44, 2: 40, 3: 33 };
const growing = storageTrial(
  { start: alike({ 0: 46 }), packet: alike(years), jar: alike({ 1: 45, 2: 44, 3: 43 }) },
  { status: 'growing', scoring: { germinated: null, blind: 'no', days: [7, 14], counts: 'cumulative' } },
);
const testsOf = (trial: Trial | null) => [...new Set(trial?.sowings.map(({ stored }) => stored))];
/** Jars of year 3 counted on day 7 only. */
const underWay = {
  ...growing,
  counts: growing.counts.map((count) => (count.sowing.includes('-3-') ? { ...count, day: 7 } : count)),
};

test('tests whose counts are complete are analysed, others not yet', () => {
  expect(testsOf(soFar(growing))).toEqual([0, 1, 2, 3]);
  expect(testsOf(soFar(underWay))).toEqual([0, 1, 2]);
  const result = analyse(underWay).results.find(({ measure }) => measure === 'storage');
  expect(result?.storage?.map(({ tests }) => tests.length)).toEqual([3, 3]);
  expect(JSON.stringify(analyse(underWay))).not.toContain('packet-3-');
});

test('a test with a missed check is over once a later one is counted', () => {
  const missed = { ...growing, counts: growing.counts.filter(({ sowing }) => sowing !== 'jar-2-1') };
  expect(testsOf(soFar(missed))).toEqual([0, 1, 2, 3]);
  const last = { ...growing, counts: growing.counts.filter(({ sowing }) => sowing !== 'jar-3-1') };
  expect(testsOf(soFar(last))).toEqual([0, 1, 2]);
  const out = { ...last, events: [{ day: 2, date: null, sowings: ['jar-3-1'], what: 'dropped', action: 'left-out' as const }] }; // prettier-ignore
  expect(testsOf(soFar(out))).toEqual([0, 1, 2, 3]);
});

test('without a day or planned count days the last test is not taken as over', () => {
  const [outcome] = growing.outcomes;
  const open = { ...growing, outcomes: [{ ...outcome!, day: null }], scoring: { ...growing.scoring, days: [] } };
  expect(testsOf(soFar(open))).toEqual([0, 1, 2]);
});

test('a jar all of whose seeds were up early needs no later check', () => {
  const full = { ...underWay, counts: underWay.counts.map((count) => (count.sowing.includes('-3-') ? { ...count, germinated: 50 } : count)) }; // prettier-ignore
  expect(testsOf(soFar(full))).toEqual([0, 1, 2, 3]);
});

test('while a test is counted blind and the files tell its treatments, nothing is told', () => {
  const blind = { ...underWay, scoring: { ...underWay.scoring, blind: 'yes' as const } };
  expect(soFar(blind)).toBeNull();
  expect(analyse(blind).results).toEqual([]);
  expect(toldTrial(blind).sowings.every(({ treatment }) => treatment === null)).toBe(true);

  const sealed = { ...blind, sowings: blind.sowings.map((sowing) => (sowing.stored === 3 ? { ...sowing, treatment: null } : sowing)) }; // prettier-ignore
  expect(testsOf(soFar(sealed))).toEqual([0, 1, 2]);
  expect(toldTrial(sealed)).toBe(sealed);
});

test('a trial that is no series, or whose first test is not over, has nothing to analyse', () => {
  expect(soFar(germinationTrial({ packet: [[40, 50]], jar: [[41, 50]] }, { status: 'growing' }))).toBeNull();
  const started = { ...growing, sowings: growing.sowings.filter(({ stored }) => stored === 0) };
  expect(soFar(started)).toBeNull();
  const uncounted = { ...growing, counts: [makeCount('start-0-1', 14, 45)] };
  expect(soFar(uncounted)).toBeNull();
});
