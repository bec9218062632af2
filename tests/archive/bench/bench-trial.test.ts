import { expect, test } from 'vitest';
import { benchTrial } from '../../../src/archive/bench/bench-trial.ts';
import { inBenchOrder } from '../../../src/print/sheets/in-bench-order.ts';
import { makeOutcome, makeSowing, makeTrial } from '../../support/make-trial.ts';

const input = (file: string) => ({ file, sha256: '', bytes: 1 });
const growing = makeTrial({
  id: 'leek',
  status: 'growing',
  sown: '2026-04-04',
  scoring: { germinated: 'loop visible', blind: 'no', days: [5, 8], counts: 'new' },
  outcomes: [makeOutcome(), makeOutcome({ id: 'height', measure: 'trait', column: 'height', primary: false })],
  sowings: [
    makeSowing('s1', 'jar', { position: '10', batch: 'cup-9', soakHours: 6 }),
    makeSowing('s2', 'packet', { position: '2', sown: '2026-04-05' }),
  ],
  inputs: ['counts.csv', 'events.csv', 'sowings.csv', 'trial.yaml'].map(input),
});

test('a growing trial goes to the bench in its order, with what to count and what was counted, without treatments', () => {
  const bench = benchTrial(growing, inBenchOrder);
  expect(JSON.stringify({ ...bench, title: '' })).not.toMatch(/jar|packet|cup-9|treatment|soak|lot/);
  expect(bench).toMatchObject({
    id: 'leek',
    counts: 'new',
    days: [5, 8],
    germinated: 'loop visible',
    traits: [{ column: 'height', unit: null }],
    files: ['counts.csv', 'events.csv'],
  });
  expect(bench?.sowings.map(({ id, sown }) => [id, sown])).toEqual([['s2', '2026-04-05'], ['s1', null]]); // prettier-ignore
});

test('a trial that is over, or has no sowings yet, is not recorded', () => {
  expect(benchTrial({ ...growing, status: 'finished' }, inBenchOrder)).toBe(null);
  expect(benchTrial({ ...growing, status: 'abandoned' }, inBenchOrder)).toBe(null);
  expect(benchTrial({ ...growing, sowings: [] }, inBenchOrder)).toBe(null);
});
