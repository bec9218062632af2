import { expect, test } from 'vitest';
import { manyComparisons } from '../../../src/analysis/caveats/many-comparisons.ts';
import type { Comparison } from '../../../src/analysis/analysis.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeResult } from '../../support/make-result.ts';
import { makeTrial } from '../../support/make-trial.ts';

const found = (treatment: string, p: number, pAdjusted: number | null, parts: Partial<Comparison> = {}) =>
  makeComparison({
    estimate: 9,
    parts: {
      treatment,
      verdict: 'different',
      test: { method: 'score-f', statistic: 6, df: [1, 7], p, pAdjusted },
      ...parts,
    },
  });
const told = (...comparisons: Comparison[]) => manyComparisons(makeTrial(), [makeResult({ comparisons })]);

test('a difference that does not hold among three comparisons', () => {
  const others = [found('tin', 0.5, 0.9, { verdict: 'unclear' }), found('bag', 0.4, 0.8, { verdict: 'unclear' })];
  expect(told(found('jar', 0.02, 0.06), ...others)).toMatchObject([
    { weight: 'caution', lot: 'leek', treatment: 'jar', evidence: { comparisons: 3, p: 0.02, pAdjusted: 0.06 } },
  ]);
  expect(told(found('jar', 0.02, 0.06, { verdict: 'matters' }), ...others)).toHaveLength(1);
});

test('comparisons pooled over lots are counted apart', () => {
  const [first, second] = [found('jar', 0.03, 0.06, { lot: 'all' }), found('tin', 0.04, 0.06, { lot: 'all' })];
  expect(told(found('jar', 0.01, 0.02), first, second)).toMatchObject([
    { lot: 'all', treatment: 'jar', evidence: { comparisons: 2 } },
    { lot: 'all', treatment: 'tin', evidence: { comparisons: 2 } },
  ]);
});

test('one that holds, or none found', () => {
  expect(told(found('jar', 0.01, 0.05))).toEqual([]);
  expect(told(found('jar', 0.02, 0.06, { verdict: 'unclear' }))).toEqual([]);
  expect(told(found('jar', 0.02, null))).toEqual([]);
});
