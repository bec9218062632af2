import { expect, test } from 'vitest';
import { nearLimit } from '../../../src/analysis/caveats/near-limit.ts';
import { germinationTrial, makeTreatment } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: number, jar: number, tin = 50) => {
  const tray = (count: number) => [[count, 100]] as const;
  const treatments = [makeTreatment('packet', { control: true }), makeTreatment('jar'), makeTreatment('tin')];
  const trial = germinationTrial({ packet: tray(packet), jar: tray(jar), tin: tray(tin) }, { treatments });
  return nearLimit(trial, [resultOf(trial)]);
};

test('95 % and 5 % are near, 94 % and 6 % are not', () => {
  expect(told(80, 95)).toMatchObject([
    {
      weight: 'note',
      treatment: 'jar',
      evidence: { stored: null, estimate: 95, limit: 100, germinated: 95, seeds: 100 },
    },
  ]);
  expect(told(5, 80)).toMatchObject([{ treatment: 'packet', evidence: { estimate: 5, limit: 0 } }]);
  expect(told(6, 94)).toEqual([]);
});

test('silent where there was no room, or hardly any came up, but only there', () => {
  expect(told(96, 97)).toEqual([]);
  expect(told(1, 2)).toEqual([]);
  expect(told(0, 80)).toEqual([]); // nothing came up, and that is said
  expect(told(96, 97, 5).map(({ treatment }) => treatment)).toEqual(['tin']);
});
