import { expect, test } from 'vitest';
import { batchUnknown } from '../../../src/analysis/caveats/batch-unknown.ts';
import type { Treated } from '../../../src/trial/trial.ts';
import { germinationTrial, makeTreatment } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
] as const;
const told = (treated: Treated, batchOf: (treatment: string) => string | null = () => null, of = trays.slice(0)) => {
  const treatments = [makeTreatment('packet', { control: true }), makeTreatment('jar'), makeTreatment('tin')];
  const sowing = { container: 'tray', assignment: 'random', treated, block: null } as const;
  const trial = germinationTrial({ packet: of, jar: of, tin: of }, { treatments, sowing });
  const sowings = trial.sowings.map((each) => ({ ...each, batch: batchOf(each.treatment ?? '') }));
  return batchUnknown({ ...trial, sowings }, [resultOf({ ...trial, sowings })]);
};

test('nothing said of batches is one caution for all', () => {
  expect(told('unknown')).toMatchObject([
    {
      weight: 'caution',
      outcome: null,
      lot: null,
      treatment: null,
      evidence: { treated: 'unknown', treatments: ['jar', 'tin'] },
    },
  ]);
});

test('in batches, without saying which', () => {
  expect(told('in-batches')).toMatchObject([{ evidence: { treated: 'in-batches' } }]);
});

test('each tray by itself, all at once, or named batches', () => {
  expect(told('each-sowing')).toEqual([]);
  expect(told('at-once')).toEqual([]);
  expect(told('unknown', (treatment) => (treatment === 'packet' ? null : 'b1'))).toEqual([]);
});

test('a treatment without batches beside one with', () => {
  expect(told('unknown', (treatment) => (treatment === 'jar' ? 'b1' : null))).toMatchObject([
    { outcome: 'germination', treatment: 'tin', evidence: { treatments: ['tin'] } },
  ]);
});

test('single trays are one batch each anyway', () => {
  expect(told('unknown', () => null, trays.slice(0, 1))).toEqual([]);
});
