import { expect, test } from 'vitest';
import type { Comparison } from '../../src/analysis/analysis.ts';
import { FINDING_KINDS, findingKind } from '../../src/wording/finding-kind.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeResult } from '../support/make-result.ts';

const kindOf = (parts: Partial<Comparison>) => {
  const comparison = makeComparison({ estimate: 12, parts });
  return findingKind(makeResult({ comparisons: [comparison] }), comparison);
};

test('a finding is sorted no higher than its sentence claims', () => {
  expect(kindOf({ verdict: 'matters' })).toBe('matters');
  expect(kindOf({ verdict: 'different' })).toBe('different');
  expect(kindOf({ verdict: 'matters', ceiling: 'probably' })).toBe('probably-different');
  expect(kindOf({ verdict: 'different', ceiling: 'probably' })).toBe('probably-different');
  expect(kindOf({ verdict: 'same' })).toBe('alike');
  expect(kindOf({ verdict: 'same', ceiling: 'probably' })).toBe('probably-alike');
  expect(kindOf({ verdict: 'unclear', ceiling: 'probably' })).toBe('not-settled');
  expect(kindOf({ verdict: 'matters', ceiling: 'cause-unclear' })).toBe('cause-unclear');
  expect(kindOf({ verdict: 'untestable' })).toBe('cannot-tell');
  expect(kindOf({ verdict: 'unclear', estimate: null })).toBe('cannot-tell');
});

test.each(['en', 'de'])('every kind has its name, no two the same: %s', (language) => {
  const { ui } = wordsFor(language);
  expect(new Set(FINDING_KINDS.map((kind) => ui[`finding.${kind}`])).size).toBe(FINDING_KINDS.length);
});
