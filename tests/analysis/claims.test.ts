import { expect, test } from 'vitest';
import type { Comparison, Result } from '../../src/analysis/analysis.ts';
import { carriedClaim } from '../../src/analysis/claims.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeResult } from '../support/make-result.ts';

const claim = (estimate: number | null, parts: Partial<Comparison>, result: Partial<Result> = {}) =>
  carriedClaim(makeResult(result), makeComparison({ estimate, parts }));

test.each([
  ['matters', 3, 'higher'],
  ['different', 3, 'higher'],
  ['different', -3, 'lower'],
  ['same', 3, 'same'],
  ['same', 0, 'same'],
  ['unclear', 30, 'unclear'],
  ['untestable', 30, 'unclear'],
] as const)('a verdict of %s with an estimate of %d carries "%s"', (verdict, estimate, is) => {
  expect(claim(estimate, { verdict })).toEqual({ is, probably: false });
});

test.each(['t50', 'mgt'] as const)('%s is earlier or later, never higher or lower', (measure) => {
  expect(claim(-1.2, { verdict: 'different' }, { measure }).is).toBe('earlier');
  expect(claim(1.2, { verdict: 'matters' }, { measure }).is).toBe('later');
});

test.each(['maguire', 'spread', 'trait', 'storage'] as const)('%s is higher or lower', (measure) => {
  expect(claim(1, { verdict: 'different' }, { measure }).is).toBe('higher');
});

test('seed that lost more water is lower in moisture', () => {
  const matters = { verdict: 'matters' } as const;
  expect(claim(4, matters, { measure: 'moisture', unit: '% of mass lost' }).is).toBe('lower');
  expect(claim(4, matters, { measure: 'moisture', unit: '% wet basis' }).is).toBe('higher');
});

test('a ceiling of probably asks for the word where something is claimed, and not of what is open', () => {
  const ceiling = 'probably';
  expect(claim(3, { verdict: 'different', ceiling })).toEqual({ is: 'higher', probably: true });
  expect(claim(3, { verdict: 'same', ceiling })).toEqual({ is: 'same', probably: true });
  expect(claim(3, { verdict: 'unclear', ceiling })).toEqual({ is: 'unclear', probably: false });
});

test.each(['matters', 'different', 'same', 'unclear', 'untestable'] as const)(
  'an unclear cause leaves nothing but "unclear" of %s',
  (verdict) => {
    expect(claim(30, { verdict, ceiling: 'cause-unclear' })).toEqual({ is: 'unclear', probably: false });
  },
);

test('what could not be computed is unclear', () => {
  expect(claim(null, { verdict: 'different' }).is).toBe('unclear');
});
