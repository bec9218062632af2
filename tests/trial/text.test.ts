import { expect, test } from 'vitest';
import { cellName } from '../../src/trial/csv/cell-name.ts';
import { cellPlaces } from '../../src/trial/csv/cell-places.ts';
import { findSeparator } from '../../src/trial/csv/find-separator.ts';
import { DataError } from '../../src/trial/data-error.ts';
import { problemText } from '../../src/trial/problem-text.ts';
import type { Problem } from '../../src/trial/problem.ts';
import { convertUnit } from '../../src/trial/text/convert-unit.ts';
import { daysBetween } from '../../src/trial/text/days-between.ts';
import { decodeText } from '../../src/trial/text/decode-text.ts';
import { nearest } from '../../src/trial/text/nearest.ts';
import { readUnit } from '../../src/trial/text/read-unit.ts';

test('nearest finds the four slips and nothing far off', () => {
  const known = ['germination', 'treatments', 'jar', 'packet'];
  expect(
    ['germintaion', 'germinatio', 'germinnation', 'gerninatiom', 'Jar', 'packet'].map((word) => nearest(word, known)),
  ).toEqual(['germination', 'germination', 'germination', 'germination', 'jar', 'packet']);
  expect(nearest('fridge', known)).toBeNull();
  expect(nearest('', known)).toBeNull();
});

test.each([
  [0, 1, 'A1'],
  [25, 7, 'Z7'],
  [26, 7, 'AA7'],
  [701, 3, 'ZZ3'],
  [702, 3, 'AAA3'],
])('cellName of column %d and row %d is %s', (column, row, name) => {
  expect(cellName(column, row)).toBe(name);
});

test('cellPlaces counts lines of any end and columns in characters', () => {
  const placeOf = cellPlaces(new TextEncoder().encode('a\r\nüb,c\rd\n'));
  expect([0, 3, 5, 7, 9].map(placeOf)).toEqual([
    { line: 1, column: 1 },
    { line: 2, column: 1 },
    { line: 2, column: 2 },
    { line: 2, column: 4 },
    { line: 3, column: 1 },
  ]);
});

test.each([
  ['a;b,c;d\n', ';', false],
  ['a,b\n1;2\n', ',', false],
  ['"a;b;c",d\n', ',', false],
  ['a\tb,c\n', '\t', false],
  ['SEP=;\r\na,b,c\n', ';', true],
  ['one column\n', ',', false],
])('findSeparator of %j is %j', (text, separator, sepLine) => {
  expect(findSeparator(text)).toEqual({ separator, sepLine });
});

test('readUnit knows spellings; convertUnit keeps the same unit exact', () => {
  const unit = (name: string) => readUnit(name) ?? expect.unreachable(name);
  expect(['Hours', 'IN', '°c', 'yrs', ' g '].map((name) => unit(name).name)).toEqual(['h', 'in', '°C', 'years', 'g']);
  expect(readUnit('toString')).toBeNull();
  expect(convertUnit(0.1, unit('years'), unit('years'))).toBe(0.1);
  expect(convertUnit(1, unit('lb'), unit('g'))).toBe(453.59237);
  expect(convertUnit(36, unit('h'), unit('days'))).toBe(1.5);
  expect(convertUnit(6, unit('months'), unit('years'))).toBe(0.5);
  expect(() => convertUnit(1, unit('g'), unit('cm'))).toThrow('needs two units of one kind');
  expect(() => convertUnit(1, unit('°C'), unit('°F'))).toThrow('with factors');
});

test('daysBetween crosses months, leap days and summer time', () => {
  expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
  expect(daysBetween('2026-04-04', '2026-04-01')).toBe(-3);
});

test('decodeText names what it read and composes letters', () => {
  const decomposed = new TextEncoder().encode('e\u0301');
  expect(decodeText(decomposed)).toEqual({ text: 'é', encoding: 'UTF-8' });
  expect(decodeText(new Uint8Array([0x80, 0xe9]))).toEqual({ text: '€é', encoding: 'Windows-1252' });
  expect(decodeText(new Uint8Array([0xff, 0xfe, 0x41, 0]))).toEqual({ text: 'A', encoding: 'UTF-16' });
});

const PROBLEM: Problem = {
  file: 'counts.csv',
  line: 2,
  column: 7,
  cell: 'C2',
  field: 'germinated',
  level: 'error',
  rule: 'x',
  message: 'found 52',
  remedy: 'Look it up.',
};

test('DataError lists every error in the words of check, and no stack', () => {
  const notice: Problem = { ...PROBLEM, level: 'notice' };
  const error = new DataError([
    notice,
    PROBLEM,
    { ...PROBLEM, file: 'key.csv', line: null, column: null, field: null },
  ]);
  expect(error.message).toBe(
    'counts.csv:2:7 germinated: found 52\n  error: Look it up.\nkey.csv: found 52\n  error: Look it up.',
  );
  expect(error.loc).toEqual({ file: 'counts.csv', line: 2, column: 7 });
  expect(error.stack).toBeUndefined();
});

test('problemText cannot steer a terminal', () => {
  expect(problemText({ ...PROBLEM, file: 'a\u001b[2Jb', message: 'x\u202Ey' })).toBe(
    'a\uFFFD[2Jb:2:7 germinated: x\uFFFDy\n  error: Look it up.',
  );
});
