import { expect, test } from 'vitest';
import { seedsByMass } from '../../../src/analysis/caveats/seeds-by-mass.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { germinationTrial, makeLot } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (byMass: readonly string[], measure: Measure = 'germination') => {
  const lots = [{ ...makeLot('leek'), seedsPerGram: 400 }];
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] }, { lots });
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, seedsByMass: byMass.includes(sowing.id) }));
  return seedsByMass({ ...trial, sowings }, [resultOf({ ...trial, sowings }, { measure })]);
};

test('seeds weighed out', () => {
  expect(told(['leek-jar-1'])).toMatchObject([
    {
      weight: 'caution',
      outcome: 'germination',
      lot: 'leek',
      evidence: { sowings: ['leek-jar-1'], seedsPerGram: 400 },
    },
  ]);
});

test('seeds counted, or an outcome that needs no number of seeds', () => {
  expect(told([])).toEqual([]);
  expect(told(['leek-jar-1'], 't50')).toEqual([]);
});
