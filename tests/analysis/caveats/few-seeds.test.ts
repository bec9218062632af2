import { expect, test } from 'vitest';
import { fewSeeds } from '../../../src/analysis/caveats/few-seeds.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: number, jar: number) => {
  const trial = germinationTrial({ packet: [[20, packet]], jar: [[20, jar]] });
  return fewSeeds(trial, [resultOf(trial)]);
};

test('49 seeds of a treatment are few', () => {
  expect(told(50, 49)).toMatchObject([{ weight: 'note', lot: 'leek', treatment: 'jar', evidence: { seeds: 49 } }]);
  expect(told(25, 25)).toHaveLength(2);
});

test('50 are not', () => {
  expect(told(50, 50)).toEqual([]);
});
