import { expect, test } from 'vitest';
import { lotTests } from '../../src/analysis/lot-tests.ts';
import { makeAnalysis, makeGroup, makeResult } from '../support/make-result.ts';
import { makeLot, makeSowing, makeTrial } from '../support/make-trial.ts';

const groups = [
  makeGroup('packet'),
  makeGroup('jar', { estimate: null }),
  makeGroup('packet', { stored: 1, estimate: 60 }),
  makeGroup('packet', { lot: 'cress', estimate: 99 }),
];
const series = makeTrial({
  id: 'b-series',
  lots: [makeLot('leek'), makeLot('cress', 'cress')],
  sowings: [
    makeSowing('p1', 'packet', { sown: '2025-03-02' }),
    makeSowing('p2', 'packet', { sown: '2025-03-01' }),
    makeSowing('j1', 'jar', { sown: '2025-03-01' }),
    makeSowing('p3', 'packet', { sown: '2026-03-01', stored: 1 }),
    makeSowing('c1', 'packet', { sown: '2024-01-01', lot: 'cress' }),
  ],
});
const other = makeTrial({ id: 'a-other', sowings: [makeSowing('x', 'packet', { sown: '2025-03-01' })] });
const told = (lot: string) =>
  lotTests(lot, [
    { trial: series, analysis: makeAnalysis({ results: [makeResult({ groups, days: { leek: 14, cress: 5 } })] }) },
    { trial: other, analysis: makeAnalysis({ results: [makeResult({ groups: [makeGroup('packet')] })] }) },
    { trial: makeTrial({ id: 'growing' }), analysis: makeAnalysis({ results: [] }) },
  ]).map(({ trial, group, date, day }) => `${date} ${trial.id} ${group.treatment} ${group.estimate} day ${day}`);

test('every test of the lot by date, then trial; what is not known is no test', () => {
  expect(told('leek')).toEqual([
    '2025-03-01 a-other packet 75.5 day 14',
    '2025-03-01 b-series packet 75.5 day 14',
    '2026-03-01 b-series packet 60 day 14',
  ]);
  expect(told('cress')).toEqual(['2024-01-01 b-series packet 99 day 5']);
  expect(told('nowhere')).toEqual([]);
});

test('the primary germination outcome counts, another measure never', () => {
  const results = [
    makeResult({ measure: 'trait', groups: [makeGroup('packet', { estimate: 42 })] }),
    makeResult({ outcome: 'early', primary: false, day: 7, days: { leek: 7 } }),
    makeResult({ outcome: 'late', groups: [makeGroup('packet', { estimate: 88 })] }),
  ];
  const [only, ...more] = lotTests('leek', [{ trial: other, analysis: makeAnalysis({ results }) }]);
  expect([only?.group.estimate, only?.day, more]).toEqual([88, 14, []]);
});
