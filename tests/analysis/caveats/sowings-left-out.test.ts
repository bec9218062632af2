import { expect, test } from 'vitest';
import { sowingsLeftOut } from '../../../src/analysis/caveats/sowings-left-out.ts';
import type { LeftOutReason, Result } from '../../../src/analysis/analysis.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
] as const;
const trial = germinationTrial({ packet: trays, jar: trays });
const told = (ids: readonly string[], reason: LeftOutReason, parts: Partial<Result> = {}) =>
  sowingsLeftOut(trial, [
    resultOf(trial, { leftOut: ids.map((sowing) => ({ sowing, reason, what: 'dropped' })), ...parts }),
  ]);

test('a jar that was dropped, with the verdict as it is and with it in', () => {
  const withLeftOut = { sowings: ['leek-jar-1'], estimate: 2, interval: null, verdict: 'unclear' as const };
  const comparison = makeComparison({ estimate: 9, parts: { verdict: 'different', withLeftOut } });
  expect(told(['leek-jar-1'], 'deviation', { comparisons: [comparison] })).toMatchObject([
    {
      weight: 'caution',
      outcome: 'germination',
      lot: 'leek',
      treatment: 'jar',
      evidence: {
        sowings: [{ sowing: 'leek-jar-1', reason: 'deviation', what: 'dropped' }],
        verdicts: [{ treatment: 'jar', verdict: 'different', withThem: 'unclear' }],
      },
    },
  ]);
});

test('a packet left out touches every comparison with packets', () => {
  expect(told(['leek-packet-1'], 'not-checked')).toMatchObject([
    { treatment: 'packet', evidence: { verdicts: [{ treatment: 'jar', withThem: null }] } },
  ]);
});

test('one caveat a treatment', () => {
  expect(told(['leek-jar-1', 'leek-jar-2', 'leek-packet-1'], 'deviation').map(({ treatment }) => treatment)).toEqual([
    'jar',
    'packet',
  ]);
});

test('nothing left out, or no seed number, which has its own', () => {
  expect(told([], 'deviation')).toEqual([]);
  expect(told(['leek-jar-1'], 'no-seed-number')).toEqual([]);
});
