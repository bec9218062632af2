import { expect, test } from 'vitest';
import { unequalSoak } from '../../../src/analysis/caveats/unequal-soak.ts';
import type { Varies } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

type Hours = readonly (number | null)[];
const told = (packet: Hours, jar: Hours, varies: Varies = 'storage') => {
  const trays = (hours: Hours) => hours.map(() => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) }, { varies });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, soakHours: [...packet, ...jar][index] ?? null }));
  return unequalSoak({ ...trial, sowings }, [resultOf({ ...trial, sowings })]);
};

test('jars soaked for 6 h and packets for 1 h', () => {
  expect(told([1, 1], [6, 6])).toMatchObject([
    {
      weight: 'serious',
      treatment: 'jar',
      evidence: { hours: { treatment: { shortest: 6, longest: 6 }, control: { shortest: 1, longest: 1 } } },
    },
  ]);
});

test('single trays are told too, and one tray among several', () => {
  expect(told([1], [6])).toHaveLength(1);
  expect(told([6, 6, 1], [6, 6, 6])).toHaveLength(1);
});

test('alike within a tenth, or where soaking is the question', () => {
  expect(told([6, 6], [6.5, 6])).toEqual([]);
  expect(told([1, 1], [6, 6], 'soak')).toEqual([]);
});

test('not recorded is not the same as soaked, but may be as dry', () => {
  expect(told([null, null], [6, 6])).toMatchObject([{ evidence: { hours: { control: null } } }]);
  expect(told([null, null], [0, 0])).toEqual([]);
  expect(told([null, null], [null, null])).toEqual([]);
});
