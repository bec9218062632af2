import { expect, test } from 'vitest';
import { withCeilings } from '../../src/analysis/with-ceilings.ts';
import type { Caveat } from '../../src/analysis/analysis.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeCaveat, makeResult } from '../support/make-result.ts';

const jar = makeComparison({ estimate: 12, parts: { verdict: 'same' } });
const tin = makeComparison({ estimate: 3, parts: { treatment: 'tin', verdict: 'different' } });
const results = [
  makeResult({ comparisons: [jar, tin] }),
  makeResult({ outcome: 't50', measure: 't50', comparisons: [jar] }),
];
const ceilings = (...caveats: readonly Caveat[]) =>
  withCeilings(results, caveats).map(({ comparisons }) =>
    comparisons.map(({ treatment, ceiling, ceilingFrom }) => [treatment, ceiling, ...ceilingFrom].join(' ')),
  );
const caveat = (id: Caveat['id'], weight: Caveat['weight'], parts: Partial<Caveat> = {}) =>
  makeCaveat(id, { weight, ...parts });

test('without caveats, and with notes only, nothing is capped', () => {
  expect(ceilings(caveat('few-units', 'note'))).toEqual([['jar none', 'tin none'], ['jar none']]);
  expect(ceilings()).toEqual([['jar none', 'tin none'], ['jar none']]);
});

test('a caution makes it probable, all cautions are named once', () => {
  const twice = caveat('still-germinating', 'caution', { treatment: 'packet' });
  expect(
    ceilings(caveat('not-randomised', 'caution'), twice, caveat('still-germinating', 'caution', { treatment: 'jar' })),
  ).toEqual([
    ['jar probably not-randomised still-germinating', 'tin probably not-randomised still-germinating'],
    ['jar probably not-randomised still-germinating'],
  ]);
});

test('a serious caveat leaves the cause open and goes before cautions', () => {
  expect(
    ceilings(caveat('unequal-soak', 'serious', { treatment: 'jar' }), caveat('not-randomised', 'caution')),
  ).toEqual([['jar cause-unclear unequal-soak', 'tin probably not-randomised'], ['jar cause-unclear unequal-soak']]);
});

test('a caveat of speed limits speed only', () => {
  expect(ceilings(caveat('checked-on-different-days', 'serious', { outcome: 't50' }))).toEqual([
    ['jar none', 'tin none'],
    ['jar cause-unclear checked-on-different-days'],
  ]);
});

test('verdicts and figures stay as computed, and what was given is not altered', () => {
  const [result] = withCeilings(results, [caveat('unequal-soak', 'serious')]);
  expect(result?.comparisons[0]).toEqual({ ...jar, ceiling: 'cause-unclear', ceilingFrom: ['unequal-soak'] });
  expect(results[0]?.comparisons[0]).toEqual(jar);
});
