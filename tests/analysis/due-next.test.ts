import { expect, test } from 'vitest';
import { dueNext } from '../../src/analysis/due-next.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeCount, makeOutcome, makeSowing, makeTrial } from '../support/make-trial.ts';

const growing = (parts: Partial<Trial>) =>
  dueNext(
    makeTrial({
      status: 'growing',
      sown: '2026-11-11',
      sowings: [makeSowing('a', 'packet', { sown: '2026-11-11' }), makeSowing('b', 'jar', { sown: '2026-11-11' })],
      scoring: { germinated: null, blind: 'unknown', days: [6, 8, 10.5], counts: 'cumulative' },
      outcomes: [makeOutcome({ day: 14 }), makeOutcome({ id: 'height', measure: 'trait', column: 'height', day: 21 })],
      counts: [],
      ...parts,
    }),
  );

test('the first planned check without a count is due, counted from the day of sowing', () => {
  expect(growing({})).toEqual({ what: 'count', at: 6, date: '2026-11-17' });
  expect(growing({ counts: [makeCount('a', 6, 3)] })).toEqual({ what: 'count', at: 8, date: '2026-11-19' });
  expect(growing({ counts: [makeCount('a', 6, null)] })?.at).toBe(6); // an empty cell is no count
  expect(growing({ counts: [makeCount('b', 8, 3)] })).toEqual({ what: 'count', at: 10.5, date: '2026-11-22' });
});

test('the day of an outcome is due too, and measuring after the last count', () => {
  expect(growing({ counts: [makeCount('a', 11, 3)] })).toMatchObject({ what: 'count', at: 14 });
  expect(growing({ counts: [makeCount('a', 14, 3)] })).toEqual({ what: 'measure', at: 21, date: '2026-12-02' });
  const measured = { sowing: 'a', day: 21, plant: null, values: { height: 40 }, line: 2 };
  expect(growing({ counts: [makeCount('a', 14, 3)], measurements: [measured] })).toBeNull();
  expect(
    growing({ outcomes: [makeOutcome({ day: { leek: 16, cress: 6 } })], counts: [makeCount('a', 11, 3)] })?.at,
  ).toBe(16);
});

test('a storage series waits for the counts of its latest test, then for the next test of its plan', () => {
  const sowings = [
    makeSowing('s0', 'packet', { sown: '2023-11-04', stored: 0 }),
    makeSowing('s1', 'packet', { sown: '2024-11-02', stored: 0.995 }),
  ];
  const storage = { started: '2023-11-04', tests: [0, 1, 2.5, 5], left: {} };
  const series = { sown: '2023-11-04', sowings, storage, outcomes: [makeOutcome({ day: 14 })] };
  expect(growing({ ...series, counts: [makeCount('s0', 14, 9)] })).toEqual({
    what: 'count',
    at: 6,
    date: '2024-11-08',
  });
  expect(growing({ ...series, counts: [makeCount('s0', 14, 9), makeCount('s1', 14, 9)] })).toEqual({
    what: 'test',
    at: 2.5,
    date: '2026-05-05',
  });
  const over = { ...storage, tests: [0, 1] };
  expect(growing({ ...series, storage: over, counts: [makeCount('s1', 14, 9)] })).toBeNull();
});

test('nothing is due without a plan, a date of sowing, or once the trial is over', () => {
  const bare = {
    scoring: { germinated: null, blind: 'unknown', days: [], counts: 'cumulative' },
    outcomes: [],
  } as const;
  expect(growing(bare)).toBeNull();
  expect(growing({ sown: null, sowings: [] })).toBeNull();
  for (const status of ['planned', 'finished', 'abandoned'] as const) expect(growing({ status })).toBeNull();
});
