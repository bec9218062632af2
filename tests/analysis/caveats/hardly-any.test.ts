import { expect, test } from 'vitest';
import { hardlyAny } from '../../../src/analysis/caveats/hardly-any.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: number, jar: number, parts: Partial<Result> = {}) => {
  const trial = germinationTrial({ packet: [[packet, 50]], jar: [[jar, 50]] });
  return hardlyAny(trial, [resultOf(trial, parts)]);
};
const leftOut = (reason: 'not-checked' | 'nothing-germinated') => [{ sowing: 'leek-jar-1', reason, what: null }];

test('four seeds of both together', () => {
  expect(told(1, 3)).toMatchObject([
    {
      weight: 'note',
      treatment: 'jar',
      evidence: { germinated: { treatment: 3, control: 1 }, seeds: { treatment: 50, control: 50 } },
    },
  ]);
});

test('five are some', () => {
  expect(told(2, 3)).toEqual([]);
});

test('a tray without a time came up with nothing, one that was not checked may not have', () => {
  expect(told(2, 0, { measure: 't50', leftOut: leftOut('nothing-germinated') })).toMatchObject([
    { evidence: { germinated: { treatment: 0, control: 2 }, seeds: { treatment: 50, control: 50 } } },
  ]);
  expect(told(2, 0, { leftOut: leftOut('not-checked') })).toEqual([]);
});
