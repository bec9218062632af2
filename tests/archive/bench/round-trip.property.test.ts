import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countsCsv } from '../../../src/archive/bench/counts-csv.ts';
import { eventsCsv } from '../../../src/archive/bench/events-csv.ts';
import { measurementsCsv } from '../../../src/archive/bench/measurements-csv.ts';
import type { BenchRecords, BenchSession, BenchTrial } from '../../../src/trial/bench/bench.ts';
import { benchKey } from '../../../src/trial/bench/bench-key.ts';
import { dateOfDay } from '../../../src/trial/bench/date-of-day.ts';
import { newSession } from '../../../src/trial/bench/new-session.ts';
import { readBenchFile } from '../../../src/trial/bench/read-bench-file.ts';
import { recorded } from '../../../src/trial/bench/recorded.ts';
import { typedName } from '../../../src/trial/bench/typed-name.ts';
import { typedText } from '../../../src/trial/bench/typed-text.ts';
import { typedTrait } from '../../../src/trial/bench/typed-trait.ts';
import { typedValue } from '../../../src/trial/bench/typed-value.ts';
import { withCount } from '../../../src/trial/bench/with-count.ts';
import { makeBenchSowing, makeBenchTrial } from '../../trial/bench/make-bench.ts';

/* What the page for the bench saves is read back by the project's own readers as what was recorded, word for word. */

const RUNS = { seed: 20261125, numRuns: 400 };
const encoder = new TextEncoder();

const typed = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.constantFrom(
    '=1+1',
    '-oda',
    "'=x",
    '"',
    'a,b;c',
    '@me',
    '+ 2',
    "'",
    ' NC ',
    '1/2',
    'two\nlines',
    '#REF!',
    '\u200B',
  ),
);
const name = typed.map(typedName);
const id = typed.map(typedName).filter((text): text is string => text !== null && !/^=.|^#|^Err:/i.test(text));
const day = fc.oneof(
  fc.integer({ min: 0, max: 400 }),
  fc.integer({ min: 0, max: 800 }).map((half) => half / 2),
);

const trial: fc.Arbitrary<BenchTrial> = fc
  .record({
    ids: fc.uniqueArray(id, { minLength: 1, maxLength: 5 }),
    sown: fc.option(fc.constant('2026-02-27')),
    own: fc.option(fc.constant('2026-03-01')),
    counts: fc.constantFrom('cumulative' as const, 'new' as const),
  })
  .map(({ ids, sown, own, counts }) =>
    makeBenchTrial({
      sown,
      counts,
      sowings: ids.map((each, index) => makeBenchSowing(each, { sown: index === 0 ? own : null, seeds: null })),
    }),
  );

/** Rising counts, as a whole trial has them. */
const countedSession = fc
  .record({
    trial,
    days: fc.uniqueArray(day, { minLength: 1, maxLength: 5 }),
    steps: fc.array(fc.option(fc.integer({ min: 0, max: 9 }), { freq: 4 }), { minLength: 25, maxLength: 25 }),
    scorer: name,
  })
  .map(({ trial, days, steps, scorer }) => {
    let session = newSession(trial);
    trial.sowings.forEach(({ id: sowing }, row) => {
      let total = 0;
      days
        .toSorted((a, b) => a - b)
        .forEach((day, column) => {
          const step = steps[(row * 5 + column) % 25] ?? null;
          total += step ?? 0;
          const count = step === null ? 'NC' : trial.counts === 'new' ? step : total;
          session = recorded(session, withCount(session.records, { sowing, day, typed: count, scorer }, trial.counts));
        });
    });
    return session;
  });

function readBack(name: string, text: string | null, { trial }: BenchSession): BenchRecords | null {
  const { records, problems } = readBenchFile(name, encoder.encode(text ?? ''), trial);
  expect(problems.filter(({ level }) => level !== 'notice')).toEqual([]);
  return records;
}

test('counts.csv gives back every check: totals, NC, who counted', () => {
  fc.assert(
    fc.property(countedSession, (session) => {
      expect(readBack('counts.csv', countsCsv(session), session)?.checks).toEqual(session.records.checks);
    }),
    RUNS,
  );
});

const trait = fc.tuple(typed, fc.constantFrom('', 'mm', 'cm', 'g')).map(([text, unit]) => typedTrait(text, unit));
const value = fc.oneof(fc.integer({ min: 0, max: 999 }), fc.double({ min: 0, max: 1000, noNaN: true })).map((number) => typedValue(number.toFixed(3)) ?? null); // prettier-ignore

test('measurements.csv gives back every plant, value, trait and unit', () => {
  const session = fc
    .record({
      trial,
      traits: fc.uniqueArray(
        trait.filter((each) => each !== null),
        { minLength: 1, maxLength: 3, selector: ({ column }) => column.toLowerCase().replaceAll('_', ' ') },
      ),
      rows: fc.array(fc.tuple(fc.nat(4), day, name, fc.array(fc.option(value), { minLength: 3, maxLength: 3 })), {
        minLength: 1,
        maxLength: 12,
      }),
    })
    .map(({ trial, traits, rows }) => {
      const filled = rows.map(([at, day, plant, values]) => {
        const sowing = trial.sowings[at % trial.sowings.length]?.id ?? '';
        const cells = traits.map(({ column }, index) => [column, values[index] ?? null] as const);
        return { sowing, day, plant, values: Object.fromEntries(cells) };
      });
      const keyed = filled.filter(({ values }) => Object.values(values).some((cell) => cell !== null));
      const measurements = Object.fromEntries(keyed.map((row) => [benchKey(row.sowing, row.day, row.plant), row]));
      const used = traits.filter(({ column }) => keyed.some(({ values }) => values[column] !== null));
      const kept = Object.fromEntries(
        Object.entries(measurements).map(([key, row]) => [
          key,
          { ...row, values: Object.fromEntries(used.map(({ column }) => [column, row.values[column] ?? null])) },
        ]),
      );
      const isUsed = ({ column }: { column: string }) => Object.values(kept).some(({ values }) => values[column] !== null);
      return { ...newSession(trial), records: { checks: {}, events: {}, traits: used.filter(isUsed), measurements: kept } };
    })
    .filter(({ records }) => Object.keys(records.measurements).length > 0)
    .filter(({ records }) => records.traits.length === new Set(Object.values(records.measurements).flatMap(({ values }) => Object.keys(values))).size); // prettier-ignore
  fc.assert(
    fc.property(session, (each) => {
      const records = readBack('measurements.csv', measurementsCsv(each), each);
      expect(records?.measurements).toEqual(each.records.measurements);
      expect(records?.traits).toEqual(each.records.traits);
    }),
    RUNS,
  );
});

test('events.csv gives back what happened, when, to which sowing and what was done about it', () => {
  const session = fc
    .record({
      trial,
      rows: fc.array(
        fc.record({
          at: fc.option(fc.nat(4)),
          day,
          dated: fc.boolean(),
          what: typed.map(typedText).filter((text) => text !== null),
          action: fc.constantFrom('left-out' as const, 'kept' as const, 'care' as const),
        }),
        { minLength: 1, maxLength: 8 },
      ),
    })
    .map(({ trial, rows }) => {
      const events = rows
        .toSorted((a, b) => a.day - b.day)
        .map(({ at, day, dated, what, action }) => {
          const sowing = at === null ? null : (trial.sowings[at % trial.sowings.length]?.id ?? null);
          const sown = trial.sowings.find(({ id }) => id === sowing)?.sown ?? trial.sown;
          return {
            day,
            date: dated && sown !== null ? dateOfDay(sown, day) : null,
            sowing,
            what,
            action: action === 'left-out' && sowing === null ? ('kept' as const) : action,
          };
        });
      const numbered = Object.fromEntries(events.map((event, index) => [String(index + 1), event]));
      return { ...newSession(trial), records: { ...newSession(trial).records, events: numbered } };
    });
  const inOrder = (events: BenchRecords['events'] = {}) =>
    Object.values(events)
      .map(({ day, date, sowing, what, action }) => JSON.stringify([day, date, sowing, what, action]))
      .toSorted();
  fc.assert(
    fc.property(session, (each) => {
      const read = readBack('events.csv', eventsCsv(each), each);
      expect(inOrder(read?.events)).toEqual(inOrder(each.records.events));
    }),
    RUNS,
  );
});
