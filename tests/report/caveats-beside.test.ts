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
])('no caveat is without a place, and none of the whole trial has two: %j', (where) => {
  const analysis = makeAnalysis({ results: [germination, height], caveats: [makeCaveat('few-units', where)] });
  const beside = analysis.results.flatMap((result) =>
    lotsOf(result).flatMap((lot) => caveatsBeside(analysis, result, lot)),
  );
  const places = [...beside, ...caveatsOfTrial(analysis)].length;
  expect(places).toBeGreaterThan(0);
  if (where.outcome === null && where.lot === null && where.treatment === null) expect(places).toBe(1);
});

test('what is said of a lot stands beside each outcome that it concerns', () => {
  const heights = makeResult({ ...height, groups: [makeGroup('jar')] });
  const analysis = makeAnalysis({
    results: [germination, heights],
    caveats: [
      makeCaveat('one-sowing', { lot: 'leek', treatment: 'jar' }),
      makeCaveat('few-units', { lot: 'cress', treatment: 'jar' }),
      makeCaveat('two-changes', { treatment: 'tin' }),
    ],
  });
  expect(idsBeside(analysis, heights)).toEqual(['one-sowing']);
  expect(idsBeside(analysis, germination)).toEqual(['one-sowing']);
  expect(idsBeside(analysis, germination, 'cress')).toEqual(['few-units']);
});

test('what limits a lot limits those together in which it is', () => {
  const result = makeResult({
    groups: germination.groups,
    comparisons: [makeComparison({ estimate: 1, parts: { lot: 'all', lots: ['leek'] } })],
  });
  const analysis = makeAnalysis({
    caveats: [
      makeCaveat('near-limit', { outcome: 'germination', lot: 'leek', treatment: 'jar' }),
      makeCaveat('few-seeds', { outcome: 'germination', lot: 'cress', treatment: 'jar' }),
      makeCaveat('many-comparisons', { outcome: 'germination', lot: 'leek', treatment: 'jar' }),
    ],
  });
  expect(idsBeside(analysis, result, 'all')).toEqual(['near-limit']);
});
