import { expect, test } from 'vitest';
import { startMoistureUnknown } from '../../../src/analysis/caveats/start-moisture-unknown.ts';
import type { Weighing } from '../../../src/trial/trial.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const weigh = (stage: Weighing['stage'], mass: number, repeat: string | null = null): Weighing => ({
  lot: 'leek',
  treatment: 'jar',
  stage,
  mass,
  container: null,
  repeat,
  scaleStep: null,
  batch: null,
  date: null,
  line: 2,
});
const dried = [weigh('before', 100), weigh('after', 95)];
const told = (weighings: readonly Weighing[], moisture: number | null = null) =>
  startMoistureUnknown(makeTrial({ weighings, lots: [{ ...makeLot('leek'), moisture }] }), []);

test('water lost from seed of unknown moisture', () => {
  expect(told(dried)).toMatchObject([
    { weight: 'note', outcome: null, lot: 'leek', evidence: { treatments: ['jar'] } },
  ]);
});

test('moisture known of the lot, or measured before or after', () => {
  expect(told(dried, 10)).toEqual([]);
  expect(told([...dried, weigh('before', 10, 'oven'), weigh('oven-dry', 9, 'oven')])).toEqual([]);
  expect(told([...dried, weigh('after', 10, 'oven'), weigh('oven-dry', 9.4, 'oven')])).toEqual([]);
});

test('nothing weighed', () => {
  expect(told([])).toEqual([]);
});
