import { expect, test } from 'vitest';
import { calendar } from '../../src/archive/calendar.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeOutcome, makeTrial } from '../support/make-trial.ts';
import type { Trial } from '../../src/trial/trial.ts';

const words = wordsFor('en');
const ADDRESS = 'https://example.org/garden/trials/test/';
const base = makeTrial({});
const of = (parts: Partial<Trial>) =>
  calendar({ ...base, status: 'growing', sown: '2026-03-01', ...parts }, ADDRESS, words);
const lines = (text: string | null) => (text ?? '').replaceAll('\r\n ', '').replaceAll('\r\n\t', '').split('\r\n');
const valuesOf = (text: string | null, name: string) =>
  lines(text).flatMap((line) => (line.split(/[;:]/)[0] === name ? [line.slice(line.indexOf(':') + 1)] : []));
const counted = {
  scoring: { ...base.scoring, days: [5, 8] },
  outcomes: [makeOutcome({ day: 8 }), makeOutcome({ id: 'height', measure: 'trait', column: 'height', day: 20.5 })],
};

test('each planned day is a whole day of its own, with all that RFC 5545 requires of an event (3.6, 3.6.1)', () => {
  const text = of(counted);
  expect(lines(text)[0]).toBe('BEGIN:VCALENDAR');
  expect(valuesOf(text, 'VERSION')).toEqual(['2.0']);
  expect(valuesOf(text, 'PRODID')).toHaveLength(1);
  expect(valuesOf(text, 'DTSTART')).toEqual(['20260306', '20260309', '20260322']);
  expect(valuesOf(text, 'SUMMARY')).toEqual([
    'Jar or packet: count of day 5',
    'Jar or packet: count of day 8',
    'Jar or packet: measuring on day 20.5',
  ]);
  expect(new Set(valuesOf(text, 'UID')).size).toBe(3);
  expect(valuesOf(text, 'DTSTAMP')).toEqual(Array(3).fill('20260306T000000Z'));
  for (const line of (text ?? '').split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
});

test('stored seed is due years after storage began', () => {
  const storage = { started: '2021-11-06', tests: [1, 7], left: {} };
  expect(valuesOf(of({ storage, scoring: { ...base.scoring, days: [] }, outcomes: [] }), 'DTSTART')).toEqual([
    '20221106',
    '20281106',
  ]);
});

test('commas, semicolons, lines and other alphabets of a title stay text', () => {
  const text = of({ ...counted, title: 'Peas, dry; or wet\nEND:VEVENT 🌱 بذور' });
  expect(valuesOf(text, 'SUMMARY')[0]).toBe('Peas\\, dry\\; or wet\\nEND:VEVENT 🌱 بذور: count of day 5');
  expect(lines(text).filter((line) => line === 'END:VEVENT')).toHaveLength(3);
});

test('the same bytes every time; none where nothing is planned, nothing has a date, or all is over', () => {
  expect(of(counted)).toBe(of(counted));
  expect(of({ scoring: { ...base.scoring, days: [] }, outcomes: [makeOutcome({ day: null })] })).toBeNull();
  expect(of({ ...counted, sown: null, status: 'planned' })).toBeNull();
  expect(of({ ...counted, status: 'finished' })).toBeNull();
});
