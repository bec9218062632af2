import { expect, test } from 'vitest';
import { planChanges } from '../../src/analysis/plan-changes.ts';
import { tablesOf } from '../../src/archive/tables-of.ts';
import { toldTrial } from '../../src/archive/told-trial.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makePlan } from '../support/make-plan.ts';
import { makeCount, makeSowing, makeTrial } from '../support/make-trial.ts';

const input = (file: string) => ({ file, sha256: '0'.repeat(64), bytes: 1 });
const inputs = ['key.csv', 'plan.yaml', 'sowings.csv', 'trial.yaml'].map(input);
const blind = (trial: Trial, parts: Partial<Trial>): Trial => ({
  ...trial,
  inputs,
  scoring: { ...trial.scoring, blind: 'yes' },
  ...parts,
});
const finished = makeTrial({
  sowings: [makeSowing('s1', 'packet'), makeSowing('s2', 'jar')],
  counts: [makeCount('s1', 14, 20), makeCount('s2', 14, 22)],
});

test('a blind trial that is still counted tells no treatment, in any table or raw file', () => {
  const told = toldTrial(blind(finished, { status: 'growing', keyKeptApart: true }));
  const texts = tablesOf(told).filter(({ name }) => name.startsWith('counts'));
  expect(texts.length).toBe(2);
  for (const { text } of texts) expect(text).not.toMatch(/packet|jar/);
  expect(told.inputs.map(({ file }) => file)).toEqual(['plan.yaml', 'sowings.csv', 'trial.yaml']);
});

test('sowings.csv is kept back where the treatments stand in it, the plan where it holds them or its seed', () => {
  const names = (parts: Partial<Trial>) =>
    toldTrial(blind(finished, { status: 'growing', keyKeptApart: false, ...parts })).inputs.map(({ file }) => file);
  expect(names({})).toEqual(['plan.yaml', 'trial.yaml']);
  expect(names({ plan: makePlan(finished, { sowings: [] }) })).toEqual(['trial.yaml']);
  expect(names({ plan: makePlan(finished, { seed: undefined }) })).toEqual(['trial.yaml']);
  expect(names({ plan: makePlan(finished, { seed: undefined, sowings: [{ sowing: 's1' }] }) })).toEqual([
    'plan.yaml',
    'trial.yaml',
  ]);
});

test('the plan of a told trial holds no treatment of a sowing, and telling twice changes nothing', () => {
  const sowings = [
    { sowing: 's1', lot: 'leek', treatment: 'jar' },
    { sowing: 's2', lot: 'leek', treatment: 'packet' },
  ];
  const plan = makePlan(finished, { sowings, seed: 7 });
  const told = toldTrial(blind(finished, { status: 'growing', plan }));
  expect(JSON.stringify([told.sowings, told.plan?.copy.sowings, told.plan?.copy.seed])).not.toMatch(/packet|jar|7/);
  expect(planChanges(told).changes.filter(({ what }) => what.endsWith('.treatment'))).toEqual([]);
  expect(toldTrial(told)).toEqual(told);
});

test('after the last count, and in an open trial, everything is told', () => {
  for (const trial of [
    blind(finished, {}),
    blind(finished, { status: 'growing', scoring: { ...finished.scoring, blind: 'no' } }),
  ]) {
    expect(toldTrial(trial)).toBe(trial);
  }
});
