import { expect, test } from 'vitest';
import { survivorsOnly } from '../../../src/analysis/caveats/survivors-only.ts';
import { makeGroup } from '../../support/make-result.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packets: number, jars: number, plant: string | null = '1') => {
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });
  const measurements = trial.sowings.map(({ id }) => ({ sowing: id, day: 21, plant, values: { height: 42 }, line: 2 }));
  const groups = [makeGroup('packet', { plants: packets }), makeGroup('jar', { plants: jars })];
  return survivorsOnly({ ...trial, measurements }, [resultOf(trial, { outcome: 'height', measure: 'trait', groups })]);
};

test('only those that came up could be measured', () => {
  expect(told(50, 40)).toMatchObject([
    {
      weight: 'note',
      outcome: 'height',
      lot: 'leek',
      evidence: {
        groups: [
          { treatment: 'packet', plants: 50, seeds: 50 },
          { treatment: 'jar', plants: 40, seeds: 50 },
        ],
      },
    },
  ]);
});

test('all came up, or a whole tray was weighed', () => {
  expect(told(50, 50)).toEqual([]);
  expect(told(1, 1, null)).toEqual([]);
});
