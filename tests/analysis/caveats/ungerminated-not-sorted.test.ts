import { expect, test } from 'vitest';
import { ungerminatedNotSorted } from '../../../src/analysis/caveats/ungerminated-not-sorted.ts';
import type { Count } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (jar: number, fates: Partial<Count> = {}) => {
  const trial = germinationTrial({ packet: [[50, 50]], jar: [[jar, 50]] });
  const counts = trial.counts.map((count) => ({ ...count, ...fates }));
  return ungerminatedNotSorted({ ...trial, counts }, [resultOf({ ...trial, counts })]);
};

test('five seeds that did not come up and were not sorted', () => {
  expect(told(45)).toMatchObject([
    { weight: 'note', outcome: 'germination', lot: 'leek', evidence: { ungerminated: 5, seeds: 100 } },
  ]);
  expect(told(45, { abnormal: 2 })).toHaveLength(1);
});

test('sorted, or all up', () => {
  expect(told(45, { dead: 0 })).toEqual([]);
  expect(told(50)).toEqual([]);
});
