import { expect, test } from 'vitest';
import { testedStraightAway } from '../../../src/analysis/caveats/tested-straight-away.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (parts: Partial<Trial>, stored: number | null = null) => {
  const trial = germinationTrial(
    { packet: [[45, 50]], jar: [[45, 50]] },
    { varies: 'drying', question: 'Drier?', ...parts },
  );
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, stored }));
  return testedStraightAway({ ...trial, sowings }, [resultOf(trial)]);
};
const storage = (started: string) => ({ started, tests: [0, 1], left: {} });

test('storage is what varies and no time of storage is recorded', () => {
  expect(told({ varies: 'storage' })).toMatchObject([
    { weight: 'note', outcome: null, evidence: { because: 'varies' } },
  ]);
  expect(told({ varies: 'storage' }, 0)).toHaveLength(1);
});

test('the question speaks of storing', () => {
  for (const question of [
    'Does drying help storage?',
    'Does dry seed keep longer?',
    'Does silica keep leek seed alive?',
  ]) {
    expect(told({ question }), question).toMatchObject([{ evidence: { because: 'question' } }]);
  }
});

test('the question does not', () => {
  for (const question of [
    'Does drying slow it down?',
    'Is store-bought compost better?',
    'Does a lid keep the soil moist?',
  ]) {
    expect(told({ question }), question).toEqual([]);
  }
});

test('stored for a while before it was sown', () => {
  expect(told({ varies: 'storage' }, 0.5)).toEqual([]);
  expect(told({ varies: 'storage', storage: storage('2026-01-04') })).toEqual([]);
  expect(told({ varies: 'storage', storage: storage('2026-04-04') })).toHaveLength(1);
});
