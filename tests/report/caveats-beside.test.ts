import { expect, test } from 'vitest';
import { lotsOf } from '../../src/analysis/lots-of.ts';
import { caveatsBeside, caveatsOfTrial } from '../../src/report/caveats-beside.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeAnalysis, makeCaveat, makeGroup, makeResult } from '../support/make-result.ts';

const germination = makeResult({
  groups: [makeGroup('jar'), makeGroup('jar', { lot: 'cress' })],
  comparisons: [makeComparison({ estimate: 1, parts: { lot: 'all' } }), makeComparison({ estimate: 1 })],
});
const height = makeResult({ outcome: 'height', primary: false });
const idsBeside = (analysis: ReturnType<typeof makeAnalysis>, result = germination, lot = 'leek') =>
  caveatsBeside(analysis, result, lot).map(({ id }) => id);

test('lots pooled together come first', () => {
  expect(lotsOf(germination)).toEqual(['all', 'leek', 'cress']);
});

test('a caveat stands beside its own outcome and lot only', () => {
  const analysis = makeAnalysis({ caveats: [makeCaveat('few-seeds', { outcome: 'germination', lot: 'cress' })] });
  expect(idsBeside(analysis, germination, 'cress')).toEqual(['few-seeds']);
  expect(idsBeside(analysis, germination, 'leek')).toEqual([]);
  expect(idsBeside(analysis, height)).toEqual([]);
});

test('a caveat of the whole trial stands beside "how far to trust it", a serious one in its box', () => {
  const analysis = makeAnalysis({
    caveats: [makeCaveat('not-randomised'), makeCaveat('one-sowing', { weight: 'serious' })],
  });
  expect(idsBeside(analysis)).toEqual([]);
  expect(caveatsOfTrial(analysis).map(({ id }) => id)).toEqual(['not-randomised']);
});

test.each([
  { outcome: null, lot: null, treatment: null },
  { outcome: null, lot: 'cress', treatment: null },
  { outcome: null, lot: null, treatment: 'jar' },
  { outcome: null, lot: 'gone', treatment: 'jar' },
  { outcome: 'germination', lot: null, treatment: null },
  { outcome: 'germination', lot: 'all', treatment: 'jar' },
  { outcome: 'germination', lot: 'gone', treatment: null },
  { outcome: 'height', lot: null, treatment: null },
  { outcome: 'height', lot: 'cress', treatment: null },
])('a caveat has exactly one place: %j', (where) => {
  const analysis = makeAnalysis({ results: [germination, height], caveats: [makeCaveat('few-units', where)] });
  const beside = analysis.results.flatMap((result) =>
    lotsOf(result).flatMap((lot) => caveatsBeside(analysis, result, lot)),
  );
  expect([...beside, ...caveatsOfTrial(analysis)]).toHaveLength(1);
});
