import { expect, test } from 'vitest';
import { notBlind } from '../../../src/analysis/caveats/not-blind.ts';
import type { YesNo } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (blind: YesNo) => {
  const scoring = { germinated: 'loop visible', blind, days: [], counts: 'cumulative' } as const;
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] }, { scoring });
  return notBlind(trial, [resultOf(trial)]);
};

test('counting with open eyes, or not saying, is a note', () => {
  expect(told('no')).toMatchObject([{ weight: 'note', outcome: null, evidence: { blind: 'no' } }]);
  expect(told('unknown')).toMatchObject([{ evidence: { blind: 'unknown' } }]);
});

test('counting blind is not', () => {
  expect(told('yes')).toEqual([]);
});
