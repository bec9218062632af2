import { expect, test } from 'vitest';
import { noMargin } from '../../../src/analysis/caveats/no-margin.ts';
import { makeResult } from '../../support/make-result.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });

test('an outcome without a smallest difference that matters', () => {
  expect(noMargin(trial, [resultOf(trial, { matters: 5 }), resultOf(trial, { outcome: 'early' })])).toMatchObject([
    { weight: 'note', outcome: 'early', evidence: { unit: '%' } },
  ]);
});

test('an outcome with one, or with nothing to compare', () => {
  expect(noMargin(trial, [resultOf(trial, { matters: 5 }), makeResult()])).toEqual([]);
});
