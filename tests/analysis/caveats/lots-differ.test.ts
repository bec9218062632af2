import { expect, test } from 'vitest';
import { lotsDiffer } from '../../../src/analysis/caveats/lots-differ.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeResult } from '../../support/make-result.ts';
import { makeTrial } from '../../support/make-trial.ts';

const told = (p: number) => {
  const within = (lot: string, estimate: number) => makeComparison({ estimate, parts: { lot } });
  const differ = { statistic: 5, df: [1, 12] as const, p };
  const all = makeComparison({ estimate: 8, parts: { lot: 'all', lots: ['leek', 'onion'], lotsDiffer: differ } });
  return lotsDiffer(makeTrial(), [makeResult({ comparisons: [within('leek', 15), within('onion', 1), all] })]);
};

test('15 more in one lot and 1 more in the other', () => {
  expect(told(0.04)).toMatchObject([
    {
      weight: 'note',
      lot: 'all',
      treatment: 'jar',
      evidence: {
        p: 0.04,
        estimates: [
          { lot: 'leek', estimate: 15 },
          { lot: 'onion', estimate: 1 },
        ],
      },
    },
  ]);
});

test('differences that luck explains', () => {
  expect(told(0.05)).toEqual([]);
});
