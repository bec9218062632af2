import { expect, test } from 'vitest';
import { oneLot } from '../../../src/analysis/caveats/one-lot.ts';
import { makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeLot } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });

test('one lot of one crop', () => {
  expect(oneLot(trial, [resultOf(trial), resultOf(trial, { outcome: 'early' })])).toMatchObject([
    { weight: 'note', outcome: null, lot: null, evidence: { lot: 'leek', crop: 'leek' } },
  ]);
});

test('two lots, or nothing compared', () => {
  const lots = [makeLot('leek'), makeLot('cress', 'cress', 'Lepidium sativum')];
  expect(oneLot({ ...trial, lots }, [resultOf({ ...trial, lots })])).toEqual([]);
  expect(oneLot(trial, [makeResult()])).toEqual([]);
});
