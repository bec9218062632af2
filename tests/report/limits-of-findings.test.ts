import { expect, test } from 'vitest';
import { limitsOfFindings } from '../../src/report/limits-of-findings.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeAnalysis, makeCaveat, makeResult } from '../support/make-result.ts';

const primary = makeResult({
  comparisons: [makeComparison({ estimate: 5, parts: { ceiling: 'probably', ceilingFrom: ['not-randomised'] } })],
});

test('what caps the finding comes first, then what is serious, then cautions; notes and other outcomes are left out', () => {
  const caveats = [
    makeCaveat('few-seeds', { weight: 'note' }),
    makeCaveat('still-germinating', { weight: 'caution', outcome: 'germination' }),
    makeCaveat('one-batch', { weight: 'serious' }),
    makeCaveat('one-sowing', { weight: 'serious', outcome: 'height' }),
    makeCaveat('not-randomised', { weight: 'caution' }),
  ];
  expect(limitsOfFindings(makeAnalysis({ results: [primary], caveats }))).toEqual([
    'not-randomised',
    'one-batch',
    'still-germinating',
  ]);
});

test('three are enough, and nothing compared has none', () => {
  const ids = ['one-batch', 'unequal-soak', 'unequal-handling', 'one-sowing'] as const;
  const caveats = ids.map((id) => makeCaveat(id, { weight: 'serious' }));
  expect(limitsOfFindings(makeAnalysis({ results: [primary], caveats }))).toHaveLength(3);
  expect(limitsOfFindings(makeAnalysis({ results: [], caveats }))).toEqual([]);
});
