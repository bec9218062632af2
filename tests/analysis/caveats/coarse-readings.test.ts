import { expect, test } from 'vitest';
import { coarseReadings } from '../../../src/analysis/caveats/coarse-readings.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[], measure: Measure = 'trait') => {
  const trays = (values: readonly number[]) => values.map((value) => [value, 100] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return coarseReadings(trial, [resultOf(trial, { measure, unit: 'mm' })]);
};

test('every jar 42 and every packet 39', () => {
  expect(told([39, 39, 39], [42, 42, 42])).toMatchObject([
    { weight: 'note', treatment: 'jar', evidence: { values: { treatment: 42, control: 39 }, unit: 'mm' } },
  ]);
});

test('one that differs shows how much trays vary; single trays and counts do not ask', () => {
  expect(told([39, 39, 39], [42, 42, 41])).toEqual([]);
  expect(told([39], [42])).toEqual([]);
  expect(told([39, 39], [42, 42], 'germination')).toEqual([]);
});
