import { expect, test } from 'vitest';
import { addedRecords } from '../../../src/trial/bench/added-records.ts';
import { checksOfSowing } from '../../../src/trial/bench/checks-of-sowing.ts';
import { readBenchFile } from '../../../src/trial/bench/read-bench-file.ts';
import { readBenchSowings } from '../../../src/trial/bench/read-bench-sowings.ts';
import { counted, makeBenchTrial } from './make-bench.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string, trial = makeBenchTrial()) => readBenchFile('x.csv', bytes(text), trial);
const said = ({ problems }: ReturnType<typeof read>) =>
  problems.map(({ line, level, rule }) => `${line} ${level} ${rule}`);

test('sowings are read as spreadsheets write them; treatments, lots and batches are not kept', () => {
  const { sowings, problems } = readBenchSowings(
    'sowings.csv',
    bytes(
      'sep=;\r\nSowing;Lot;Treatment;Seeds;Batch;Label;Soak (h)\r\ns1;leek-2025;wet-start;40;cup-9;4S;6\r\ns2;leek-2025;moist;40;cup-8;7K;6\r\n',
    ),
  );
  expect(problems).toEqual([]);
  expect(sowings?.map(({ id, label, seeds }) => [id, label, seeds])).toEqual([['s1', '4S', 40], ['s2', '7K', 40]]); // prettier-ignore
  expect(JSON.stringify(sowings)).not.toMatch(/wet-start|moist|leek-2025|cup/);
});

test('what is wrong with sowings.csv is said with its line, and nothing is opened', () => {
  const { sowings, problems } = readBenchSowings('sowings.csv', bytes('sowing,lot,seeds\ns1,leek,~40\ns1,leek,40\n'));
  expect(sowings).toBe(null);
  expect(problems.map(({ line, rule }) => `${line} ${rule}`)).toEqual(['2 about-a-number', '3 repeated-sowing']);
});

test('a file is known by its headings, whatever a phone called it', () => {
  expect(read('sowing,lot,seeds\n').kind).toBe('sowings');
  expect(read('sowing,day,germinated\n').kind).toBe('counts');
  expect(read('sowing,day 5,day 8\n').kind).toBe('counts');
  expect(read('sowing,day,plant,height (mm)\n').kind).toBe('measurements');
  expect(read('day,sowing,what,action\n').kind).toBe('events');
  expect(read('sowing,day,dead\n').kind).toBe(null);
  expect(read('name,address\n').kind).toBe(null);
});

test('counts come in by id or blind label, long or wide, by date or day, as totals or as new ones', () => {
  const totals = (text: string, counts: 'cumulative' | 'new' = 'cumulative') =>
    checksOfSowing(read(text, makeBenchTrial({ counts })).records ?? { checks: {}, traits: [], measurements: {}, events: {} }, 's1').map(({ day, germinated }) => [day, germinated]); // prettier-ignore
  expect(totals('sowing,date,germinated\n4S,2026-04-09,3\n4S,2026-04-12,NC\n')).toEqual([[5, 3], [8, null]]); // prettier-ignore
  expect(totals('sowing;day 5;day 8\ns1;3;10\ns2;NC;1\n')).toEqual([[5, 3], [8, 10]]); // prettier-ignore
  expect(totals('sowing,day 5,day 8\ns1,3,10\n', 'new')).toEqual([[5, 3], [8, 13]]); // prettier-ignore
});

test('an empty cell is a check still to be made, NC one that was left out', () => {
  const { records } = read('sowing,day,germinated\ns1,5,\ns2,5,NC\n');
  expect(Object.keys(records?.checks ?? {})).toEqual(['["s2",5]']);
});

test('a file with an error brings nothing in, and every problem is named', () => {
  const found = read('sowing,day,germinated\ns1,5,12\ns1,8,10\nnobody,8,1\ns2,8,41\ns2,9,20+\n');
  expect(found.records).toBe(null);
  expect(said(found)).toEqual([
    '6 error about-a-number',
    '4 error unknown-sowing',
    '3 error count-falls',
    '5 error count-above-seeds',
  ]);
});

test('what is no table at all says why', () => {
  expect(read('').problems.map(({ rule }) => rule)).toEqual(['empty-file']);
  expect(readBenchFile('x.csv', new Uint8Array([0x50, 0x4b, 3, 4]), makeBenchTrial()).problems.map(({ rule }) => rule)).toEqual(['workbook']); // prettier-ignore
});

test('a file adds to what is on the device; where both differ, that is said and the device keeps its own', () => {
  const own = counted(makeBenchTrial(), ['s1', 5, 3], ['s1', 8, 10]).records;
  const file = read('sowing,day,germinated\ns1,5,3\ns1,8,12\ns2,8,7\n').records ?? own;
  const { records, asInFile, differing } = addedRecords(own, file);
  expect(differing).toEqual([{ sowing: 's1', day: 8 }]);
  const totals = ({ checks }: typeof own) => Object.entries(checks).map(([key, { germinated }]) => `${key} ${germinated}`).sort(); // prettier-ignore
  expect(totals(records)).toEqual(['["s1",5] 3', '["s1",8] 10', '["s2",8] 7']);
  expect(totals(asInFile)).toEqual(['["s1",5] 3', '["s1",8] 12', '["s2",8] 7']);
});

test('traits of one plant from two files come together; the same event is not taken in twice', () => {
  const events = 'day,sowing,what,action\n6,s1,dropped,kept\n6,s1,dropped,left-out\n';
  const heights = read('sowing,day,plant,height (mm)\ns1,14,1,42\n').records;
  const leaves = read('sowing,day,plant,leaves\ns1,14,1,3\n').records;
  const mishaps = read(events).records;
  if (!heights || !leaves || !mishaps) throw new Error('not read');
  const { records, differing } = addedRecords(addedRecords(heights, leaves).records, mishaps);
  expect(differing).toEqual([]);
  expect(Object.values(records.measurements).map(({ values }) => values)).toEqual([{ leaves: 3, height: 42 }]);
  expect(records.traits).toEqual([{ column: 'height', unit: 'mm' }, { column: 'leaves', unit: null }]); // prettier-ignore
  expect(Object.keys(addedRecords(records, mishaps).records.events)).toEqual(['1', '2']);
});
