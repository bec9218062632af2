import { expect, test } from 'vitest';
import { coarseReadings } from '../../../src/analysis/caveats/coarse-readings.ts';
import type { Comparison } from '../../../src/analysis/analysis.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[], measure: Measure = 'trait') => {
  const trays = (values: readonly number[]) => values.map((value) => [value, 100] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return coarseReadings(trial, [resultOf(trial, { measure, unit: 'mm' })]);
};

test('every jar 42 and every packet 39', () => {
  expect(told([39, 39, 39], [42, 42, 42])).toMatchObject([
    { weight: 'note', treatment: 'jar', evidence: { values: { treatment: 42, control: 39 }, unit: 'mm' } },
  ]);
});

test('means that differ by rounding only are the same reading', () => {
  const [low, high] = [0.1 + 0.2, 0.3];
  expect(low).not.toBe(high);
  expect(told([low, high, high], [0.6, 0.6, 0.6])).toMatchObject([{ evidence: { difference: null } }]);
});

test('blocks that all have the same difference, though the trays of a kind differ', () => {
  const trial = germinationTrial({ packet: [[40, 50], [44, 50]], jar: [[43, 50], [47, 50]] }); // prettier-ignore
  const result = resultOf(trial, { measure: 'trait', unit: 'mm' });
  const tell = (estimate: number | null, interval: Comparison['interval']) => {
    const units = { treatment: 3, control: 3, kind: 'block' as const };
    const comparisons = result.comparisons.map((comparison) => ({ ...comparison, estimate, interval, units }));
    return coarseReadings(trial, [{ ...result, comparisons }]);
  };
  expect(tell(3, null)).toMatchObject([{ treatment: 'jar', evidence: { difference: 3 } }]);
  expect(tell(3, { level: 0.95, lower: 1, upper: 5, method: 'paired' })).toEqual([]);
  expect(tell(null, null)).toEqual([]);
});

test('one that differs shows how much trays vary; single trays and counts do not ask', () => {
  expect(told([39, 39, 39], [42, 42, 41])).toEqual([]);
  expect(told([39], [42])).toEqual([]);
  expect(told([39, 39], [42, 42], 'germination')).toEqual([]);
});
