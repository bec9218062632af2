import { expect, test } from 'vitest';
import { twoChanges } from '../../../src/analysis/caveats/two-changes.ts';
import type { Treatment, Varies } from '../../../src/trial/trial.ts';
import { germinationTrial, makeTreatment } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (varies: Varies | null, packet: Partial<Treatment>, jar: Partial<Treatment>) => {
  const treatments = [makeTreatment('packet', { control: true, ...packet }), makeTreatment('jar', jar)];
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] }, { varies, treatments });
  return twoChanges(trial, [resultOf(trial)]);
};

test('stored both drier and colder', () => {
  expect(told('storage', { temperature: 20, moisture: 9 }, { temperature: 4, moisture: 5 })).toMatchObject([
    {
      weight: 'note',
      treatment: 'jar',
      evidence: {
        changes: [
          { what: 'temperature', treatment: 4, control: 20 },
          { what: 'moisture', treatment: 5, control: 9 },
        ],
      },
    },
  ]);
});

test('one recorded change besides the one that no key records', () => {
  expect(told('dressing', { temperature: 20 }, { temperature: 4 })).toMatchObject([
    { evidence: { changes: [{ what: 'temperature' }, { what: 'varies', treatment: 'dressing', control: null }] } },
  ]);
});

test('one change only, or not recorded', () => {
  expect(told('storage', { temperature: 20 }, { temperature: 4 })).toEqual([]);
  expect(told('storage', { temperature: 20, moisture: 9 }, { temperature: 4 })).toEqual([]);
  expect(told('dressing', {}, {})).toEqual([]);
});

test('soaking counts where it is the question; elsewhere it is unequal soak', () => {
  const [dry, soaked] = [
    { soakHours: 0, temperature: 20 },
    { soakHours: 6, temperature: 4 },
  ]; // a fridge as well
  expect(told('soak', dry, soaked)).toHaveLength(1);
  expect(told('temperature', dry, soaked)).toEqual([]);
});
