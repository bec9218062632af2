import { expect, test } from 'vitest';
import { noSeedNumber } from '../../../src/analysis/caveats/no-seed-number.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (unknown: readonly string[], measure: Measure = 'germination') => {
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, seeds: unknown.includes(sowing.id) ? null : 50 }));
  return noSeedNumber({ ...trial, sowings }, [resultOf({ ...trial, sowings }, { measure })]);
};

test('a tray of which nobody knows how many seeds it holds', () => {
  expect(told(['leek-jar-1'])).toMatchObject([
    { weight: 'caution', outcome: 'germination', lot: 'leek', evidence: { sowings: ['leek-jar-1'] } },
  ]);
});

test('all known, or an outcome that needs no number of seeds', () => {
  expect(told([])).toEqual([]);
  expect(told(['leek-jar-1'], 'trait')).toEqual([]);
});
