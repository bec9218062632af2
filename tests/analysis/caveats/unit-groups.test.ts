import { expect, test } from 'vitest';
import { unitGroups } from '../../../src/analysis/caveats/unit-groups.ts';
import type { UnitValue } from '../../../src/analysis/analysis.ts';
import { makeGroup, makeResult } from '../../support/make-result.ts';

const value = (treatment: string, stored: number, unit: string): UnitValue => ({
  lot: 'leek',
  treatment,
  stored,
  block: null,
  unit,
  sowings: [unit],
  seeds: 50,
  count: 40,
  value: 80,
  plants: null,
});

test('sowings at the start of a storage series are listed once, not once a treatment', () => {
  const groups = [0, 1].flatMap((stored) => ['packet', 'jar'].map((treatment) => makeGroup(treatment, { stored })));
  const values = [value('packet', 0, 's1'), value('jar', 0, 's1'), value('packet', 1, 's2'), value('jar', 1, 's3')];
  const units = unitGroups(makeResult({ groups, values }), 'leek').map((group) => [group.treatment, group.stored]);
  expect(units).toEqual([
    ['packet', 0],
    ['packet', 1],
    ['jar', 1],
  ]);
});
