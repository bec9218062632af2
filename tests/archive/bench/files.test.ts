import { expect, test } from 'vitest';
import { countsCsv } from '../../../src/archive/bench/counts-csv.ts';
import { eventsCsv } from '../../../src/archive/bench/events-csv.ts';
import { measurementsCsv } from '../../../src/archive/bench/measurements-csv.ts';
import { newSession } from '../../../src/trial/bench/new-session.ts';
import { counted, makeBenchTrial } from '../../trial/bench/make-bench.ts';

test('nothing recorded makes no file', () => {
  const session = newSession(makeBenchTrial());
  expect([countsCsv(session), measurementsCsv(session), eventsCsv(session)]).toEqual([null, null, null]);
});

test('counts come by day and bench, with day and date, NC and only the columns that hold something', () => {
  const session = counted(makeBenchTrial(), ['s2', 8, 'NC'], ['s1', 8, 10], ['s1', 5, 3]);
  expect(countsCsv(session)).toBe(
    'sowing,day,date,germinated\ns1,5,2026-04-09,3\ns1,8,2026-04-12,10\ns2,8,2026-04-12,NC\n',
  );
});

test('a trial that counts new ones gets new ones, and days alone where the day of sowing is not known', () => {
  const session = counted(makeBenchTrial({ counts: 'new', sown: null }), ['s1', 5, 3], ['s1', 8, 'NC'], ['s1', 11, 4]);
  expect(countsCsv(session)).toBe('sowing,day,germinated\ns1,5,3\ns1,8,NC\ns1,11,4\n');
});

test('measurements carry the unit in the heading, plants in their order, 2 before 10', () => {
  const row = (plant: string | null, height: number | null) => ({ sowing: 's1', day: 14, plant, values: { height } });
  const session = newSession(makeBenchTrial({ traits: [{ column: 'height', unit: 'mm' }, { column: 'mass', unit: 'g' }] })); // prettier-ignore
  const measurements = { a: row('10', 41), b: row('2', 38.5), c: row('3', null) };
  expect(measurementsCsv({ ...session, records: { ...session.records, measurements } })).toBe(
    'sowing,day,date,plant,height (mm)\ns1,14,2026-04-18,2,38.5\ns1,14,2026-04-18,10,41\n',
  );
});
