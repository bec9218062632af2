import { expect, test } from 'vitest';
import { germinationCourses } from '../../src/charts/germination-course.ts';
import { makeCount, makeSowing, makeTrial } from '../support/make-trial.ts';
import { invent } from './invented.ts';

const { result } = invent({ treatments: [['Packet', 0.5]] });
const trial = makeTrial({
  sowings: [
    makeSowing('p1', 'packet', { seeds: 20 }),
    makeSowing('p2', 'packet', { seeds: 30 }),
    makeSowing('j1', 'jar', { seeds: 20 }),
    makeSowing('unknown', 'jar', { seeds: null }),
    makeSowing('elsewhere', 'jar', { lot: 'cress' }),
    makeSowing('later', 'jar', { stored: 2 }),
  ],
  counts: [
    makeCount('p1', 7, 20),
    makeCount('p1', 4, 5),
    makeCount('p2', 4, 10),
    makeCount('p2', 7, null),
    makeCount('p2', 10, 27),
    makeCount('j1', 4, 0),
    makeCount('j1', 7, 8),
    makeCount('later', 4, 3),
  ],
});
const courses = (leftOut: typeof result.leftOut = []) => germinationCourses(trial, { ...result, leftOut }, 'leek');

test('pools only days on which every sowing was checked, or was already all up', () => {
  expect(courses()[0]?.together).toEqual([
    { day: 4, germinated: 15, seeds: 50 },
    { day: 10, germinated: 47, seeds: 50 },
  ]);
});

test('keeps the checks of each sowing in the order of days, missed ones out', () => {
  expect(courses()[0]?.sowings.map(({ sowing, checks }) => [sowing.id, checks.map(({ day }) => day)])).toEqual([
    ['p1', [4, 7]],
    ['p2', [4, 10]],
  ]);
});

test('takes the sowings of one lot and one storage time that have a number of seeds', () => {
  expect(courses()[1]?.sowings.map(({ sowing }) => sowing.id)).toEqual(['j1']);
  expect(germinationCourses(trial, result, 'leek', 2)).toMatchObject([
    { treatment: 'jar', together: [{ day: 4, germinated: 3 }] },
  ]);
  expect(germinationCourses(trial, result, 'nowhere')).toEqual([]);
});

test('a sowing left out is kept apart, not pooled', () => {
  const [packet] = courses([{ sowing: 'p2', reason: 'deviation', what: 'dropped' }]);
  expect(packet?.sowings.map(({ leftOut }) => leftOut)).toEqual([false, true]);
  expect(packet?.together).toEqual([
    { day: 4, germinated: 5, seeds: 20 },
    { day: 7, germinated: 20, seeds: 20 },
  ]);
});

test('a sowing that no speed could be told of still counts', () => {
  expect(courses([{ sowing: 'j1', reason: 'nothing-germinated', what: null }])[1]?.together).toHaveLength(2);
});
