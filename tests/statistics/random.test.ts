import { expect, test } from 'vitest';
import { chiSquareUpper } from '../../src/statistics/distributions/chi-square.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { shuffle } from '../../src/statistics/shuffle.ts';
import reference from '../reference/r/random.json' with { type: 'json' };

test.each(reference.random)('seed $seed gives the numbers of R', ({ seed, values }) => {
  const random = seededRandom(seed);
  expect(values.map(() => random())).toEqual(values);
});

test('a text is a seed as well: FNV-1a of "foobar" is 0xbf9cf968 (published test vector)', () => {
  expect(seededRandom('foobar')()).toBe(seededRandom(0xbf9cf968)());
  expect(seededRandom('leek')()).not.toBe(seededRandom('Leek')());
});

test('numbers lie between 0 and 1 and fill it evenly', () => {
  const random = seededRandom('even');
  const bins = Array.from({ length: 50 }, () => 0);
  for (let draw = 0; draw < 50_000; draw++) {
    const value = random();
    expect(value > 0 && value < 1).toBe(true);
    bins[Math.floor(value * 50)] = (bins[Math.floor(value * 50)] ?? 0) + 1;
  }
  const statistic = bins.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  expect(chiSquareUpper(statistic, 49)).toBeGreaterThan(0.001);
});

test('every order of four comes up alike often', () => {
  const random = seededRandom(7);
  const seen = new Map<string, number>();
  for (let draw = 0; draw < 24_000; draw++) {
    const order = shuffle('abcd'.split(''), random).join('');
    seen.set(order, (seen.get(order) ?? 0) + 1);
  }
  expect(seen.size).toBe(24);
  const statistic = [...seen.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  expect(chiSquareUpper(statistic, 23)).toBeGreaterThan(0.001);
});

test('shuffling keeps every item and leaves the input alone', () => {
  const items = Object.freeze([5, 3, 3, 9, 1]);
  expect([...shuffle(items, seededRandom(1))].sort()).toEqual([...items].sort());
  expect(shuffle(items, seededRandom(1))).toEqual(shuffle(items, seededRandom(1)));
  expect(shuffle([], seededRandom(1))).toEqual([]);
});

test.each([1.5, NaN, 2 ** 32, -(2 ** 31) - 1])('refuses %d as a seed', (seed) => {
  expect(() => seededRandom(seed)).toThrow(`got ${seed}`);
});
