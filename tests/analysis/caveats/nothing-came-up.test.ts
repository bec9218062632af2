import { expect, test } from 'vitest';
import { nothingCameUp } from '../../../src/analysis/caveats/nothing-came-up.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: number, jar: number, parts: Partial<Result> = {}) => {
  const trial = germinationTrial({ packet: [[packet, 50]], jar: [[jar, 50]] });
  return nothingCameUp(trial, [resultOf(trial, parts)]);
};

test('none of 50 jar seeds came up', () => {
  expect(told(40, 0)).toMatchObject([
    { weight: 'note', lot: 'leek', treatment: 'jar', evidence: { seeds: 50, sowings: 1 } },
  ]);
});

test('neither in a speed outcome, where such trays are left out', () => {
  const leftOut = [{ sowing: 'leek-jar-1', reason: 'nothing-germinated' as const, what: null }];
  expect(told(40, 0, { measure: 't50', leftOut })).toHaveLength(1);
});

test('one did, hardly any did in either, or nobody looked', () => {
  expect(told(40, 1)).toEqual([]);
  expect(told(2, 0)).toEqual([]);
  expect(told(40, 0, { leftOut: [{ sowing: 'leek-jar-1', reason: 'not-checked', what: null }] })).toEqual([]);
});
