import { expect, test } from 'vitest';
import { fewUnits } from '../../../src/analysis/caveats/few-units.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packets: number, jars: number) => {
  const trays = (count: number) => Array.from({ length: count }, () => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packets), jar: trays(jars) });
  return fewUnits(trial, [resultOf(trial)]);
};

test('two or three trays of a treatment are few', () => {
  expect(told(2, 2)).toHaveLength(1);
  expect(told(6, 3)).toMatchObject([
    { weight: 'note', treatment: 'jar', evidence: { unit: 'sowing', units: { treatment: 3, control: 6 } } },
  ]);
});

test('four are not, one is worse', () => {
  expect(told(4, 4)).toEqual([]);
  expect(told(4, 1)).toEqual([]);
});
