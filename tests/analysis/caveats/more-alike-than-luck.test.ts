import { expect, test } from 'vitest';
import { moreAlikeThanLuck } from '../../../src/analysis/caveats/more-alike-than-luck.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[]) => {
  const trays = (counts: readonly number[]) => counts.map((count) => [count, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return moreAlikeThanLuck(trial, [resultOf(trial)]);
};

test('eight trays that agree to a seed', () => {
  const [caveat] = told([40, 40, 41, 41], [30, 30, 30, 31]);
  expect(caveat).toMatchObject({ weight: 'note', lot: 'leek', treatment: null, evidence: { df: 6 } });
  expect(caveat?.evidence.p).toBeLessThan(0.01);
});

test('eight trays that differ as luck has it, or too few to ask', () => {
  expect(told([38, 40, 43, 41], [27, 33, 30, 31])).toEqual([]);
  expect(told([40, 40], [30, 30])).toEqual([]);
});
