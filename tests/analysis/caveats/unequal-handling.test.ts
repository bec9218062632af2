import { expect, test } from 'vitest';
import { unequalHandling } from '../../../src/analysis/caveats/unequal-handling.ts';
import type { Event } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
] as const;
const told = (sowings: readonly string[], action: Event['action'] = 'care') => {
  const events = [{ day: 6, date: null, sowings, what: 'an extra watering', action }];
  const trial = germinationTrial({ packet: trays, jar: trays }, { events });
  return unequalHandling(trial, [resultOf(trial)]);
};

test('care that only one treatment got', () => {
  expect(told(['leek-jar-1', 'leek-jar-2'])).toMatchObject([
    {
      weight: 'serious',
      treatment: 'jar',
      evidence: {
        what: 'an extra watering',
        day: 6,
        touched: { treatment: 2, control: 0 },
        of: { treatment: 2, control: 2 },
      },
    },
  ]);
  expect(told(['leek-packet-1'])).toHaveLength(1);
});

test('care that both got alike', () => {
  expect(told(['leek-jar-1', 'leek-packet-1'])).toEqual([]);
  expect(told(['leek-jar-1', 'leek-jar-2', 'leek-packet-1', 'leek-packet-2'])).toEqual([]);
});

test('one tray in three is a mishap of that tray', () => {
  const three = [...trays, [45, 50]] as const;
  const events = [{ day: 6, date: null, sowings: ['leek-jar-1'], what: 'turned', action: 'care' as const }];
  const trial = germinationTrial({ packet: three, jar: three }, { events });
  expect(unequalHandling(trial, [resultOf(trial)])).toEqual([]);
});

test('mishaps are not care', () => {
  expect(told(['leek-jar-1', 'leek-jar-2'], 'kept')).toEqual([]);
});
