import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateOfDay } from '../../../src/trial/bench/date-of-day.ts';
import { dayAt } from '../../../src/trial/bench/day-at.ts';
import { countDoubts } from '../../../src/trial/bench/count-doubts.ts';
import { missedSowings } from '../../../src/trial/bench/missed-sowings.ts';
import { newSession } from '../../../src/trial/bench/new-session.ts';
import { recorded } from '../../../src/trial/bench/recorded.ts';
import { undone } from '../../../src/trial/bench/undone.ts';
import { withCount } from '../../../src/trial/bench/with-count.ts';
import { counted, makeBenchSowing, makeBenchTrial } from './make-bench.ts';

const trial = makeBenchTrial();
const [s1 = makeBenchSowing('s1')] = trial.sowings;
const RUNS = { seed: 20261125, numRuns: 200 };

test('a total that falls, or that a later one falls below, is doubted; so is more than was sown', () => {
  const { records } = counted(trial, ['s1', 5, 12], ['s1', 8, 10], ['s1', 11, 41]);
  expect(countDoubts(records, s1, 5)).toEqual([{ rule: 'falls-later', total: 12, after: 10, day: 8 }]);
  expect(countDoubts(records, s1, 8)).toEqual([{ rule: 'falls', total: 10, before: 12, day: 5 }]);
  expect(countDoubts(records, s1, 11)).toEqual([{ rule: 'exceeds', total: 41, seeds: 40 }]);
});

test('the same total again, all seeds, NC and an unknown number of seeds are no doubts', () => {
  const { records } = counted(trial, ['s1', 5, 12], ['s1', 8, 'NC'], ['s1', 11, 12], ['s1', 14, 40]);
  for (const day of [5, 8, 11, 14, 17]) expect(countDoubts(records, s1, day)).toEqual([]);
  expect(countDoubts(counted(trial, ['s1', 5, 400]).records, { ...s1, seeds: null }, 5)).toEqual([]);
});

test('a missed check in between does not hide that a total falls', () => {
  const { records } = counted(trial, ['s1', 5, 12], ['s1', 8, 'NC'], ['s1', 11, 9]);
  expect(countDoubts(records, s1, 11)).toEqual([{ rule: 'falls', total: 9, before: 12, day: 5 }]);
});

test('a sowing is missed until it has a number or NC on that very day', () => {
  const session = counted(trial, ['s1', 5, 0], ['s2', 8, 'NC']);
  const missed = (day: number) => missedSowings(session, { day }).map(({ id }) => id);
  expect([missed(5), missed(8), missed(11)]).toEqual([['s2'], ['s1'], ['s1', 's2']]);
});

test('a sowing that was not sown yet is not missed', () => {
  const later = makeBenchTrial({ sowings: [makeBenchSowing('s1'), makeBenchSowing('s2', { sown: '2026-05-01' })] });
  expect(missedSowings(newSession(later), { date: '2026-04-12' }).map(({ id }) => id)).toEqual(['s1']);
});

test('a date is a day of each sowing, from its own day 0', () => {
  expect(dayAt({ sown: null }, { date: '2026-04-12' }, '2026-04-04')).toBe(8);
  expect(dayAt({ sown: '2026-04-10' }, { date: '2026-04-12' }, '2026-04-04')).toBe(2);
  expect(dayAt({ sown: null }, { date: '2026-04-03' }, '2026-04-04')).toBe(null);
  expect(dayAt({ sown: null }, { date: '2026-04-12' }, null)).toBe(null);
  expect(dayAt({ sown: null }, { day: 2.5 }, null)).toBe(2.5);
});

test('a day and its date lead to one another, over months, leap days and changes of the clock', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 0, max: 4000 }), (start, day) => {
      const sown = dateOfDay('1990-01-01', start);
      expect(dayAt({ sown }, { date: dateOfDay(sown, day) }, null)).toBe(day);
    }),
    RUNS,
  );
});

test('every step can be taken back, one by one, to the very beginning', () => {
  const step = fc.record({
    sowing: fc.constantFrom('s1', 's2'),
    day: fc.constantFrom(5, 8, 11),
    typed: fc.oneof(fc.integer({ min: 0, max: 45 }), fc.constantFrom('NC' as const, null)),
  });
  fc.assert(
    fc.property(
      fc.array(step, { maxLength: 30 }),
      fc.constantFrom('cumulative' as const, 'new' as const),
      (steps, counts) => {
        const seen = [newSession(makeBenchTrial({ counts }))];
        for (const entry of steps) {
          const last = seen.at(-1) ?? newSession(trial);
          const next = recorded(last, withCount(last.records, { ...entry, scorer: 'oda' }, counts));
          if (next !== last) seen.push(next);
        }
        let session = seen.at(-1) ?? newSession(trial);
        for (const before of seen.toReversed().slice(1)) {
          const { revision } = session;
          session = undone(session);
          expect(session.records).toEqual(before.records);
          expect(session.revision).toBeGreaterThan(revision);
        }
        expect(undone(session)).toBe(session);
      },
    ),
    RUNS,
  );
});

test('typing the same again is no step', () => {
  const session = counted(trial, ['s1', 5, 3]);
  expect(
    recorded(session, withCount(session.records, { sowing: 's1', day: 5, typed: 3, scorer: null }, 'cumulative')),
  ).toBe(session);
});
