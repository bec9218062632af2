import { expect, test } from 'vitest';
import { unequalTrays } from '../../../src/analysis/caveats/unequal-trays.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[]) => {
  const trays = (seeds: readonly number[]) => seeds.map((count) => [10, count] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return unequalTrays(trial, [resultOf(trial)]);
};

test('a tray of 76 seeds beside one of 25', () => {
  expect(told([25, 50], [76, 50])).toMatchObject([
    { weight: 'caution', treatment: 'jar', evidence: { largest: 76, smallest: 25, unit: 'sowing' } },
  ]);
});

test('a tray of 75 seeds beside one of 25', () => {
  expect(told([25, 50], [75, 50])).toEqual([]);
});
