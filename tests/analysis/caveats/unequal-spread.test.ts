import { expect, test } from 'vitest';
import { unequalSpread } from '../../../src/analysis/caveats/unequal-spread.ts';
import { expectClose } from '../../support/close.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { r } from '../../support/r.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[]) => {
  const trays = (counts: readonly number[]) => counts.map((count) => [count, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return unequalSpread(trial, [resultOf(trial)]);
};

test('jars that vary much more than packets (limit from R qf)', async () => {
  const [caveat] = told([40, 41, 40, 41], [20, 48, 30, 45]);
  expect(caveat).toMatchObject({
    weight: 'caution',
    lot: 'leek',
    treatment: 'jar',
    evidence: { wider: 'jar', narrower: 'packet' },
  });
  const [limit = NaN] = await r('qf(0.975, 3, 3)');
  expectClose(caveat?.evidence.limit as number, limit);
  expect(caveat?.evidence.ratio).toBeGreaterThan(limit);
});

test('the control may be the one that varies', () => {
  expect(told([20, 48, 30, 45], [40, 41, 40, 41])).toMatchObject([{ treatment: 'jar', evidence: { wider: 'packet' } }]);
});

test('both varying alike, or as luck has it', () => {
  expect(told([20, 48, 30, 45], [25, 47, 33, 44])).toEqual([]);
  expect(told([40, 41, 40, 41], [38, 43, 40, 41])).toEqual([]);
});

test('two packets that tie make no ratio of two jars that differ as luck has it', () => {
  expect(told([45, 45], [43, 47])).toEqual([]);
  expect(told([45, 45], [30, 47])).toMatchObject([{ evidence: { ratio: null } }]);
});

test('one tray, or all up, has no dispersion', () => {
  expect(told([40], [20, 48])).toEqual([]);
  expect(told([50, 50], [20, 48])).toEqual([]);
});
