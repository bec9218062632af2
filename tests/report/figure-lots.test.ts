import { expect, test } from 'vitest';
import { figureLots } from '../../src/report/figure-lots.ts';
import { invent } from '../charts/invented.ts';

const shares = (count: number) => Array.from({ length: count }, (_, i) => [`T${i}`, 0.5 + i / 100] as const);
const LOTS = ['leek', 'onion', 'carrot', 'dill', 'cress', 'beet', 'pea', 'bean', 'kale'];
const of = (treatments: number, lots: number) =>
  invent({ treatments: shares(treatments), lots: LOTS.slice(0, lots), trays: 2 }).result;

test('lots stand in one figure, in their order', () => {
  expect(figureLots(of(2, 4), 'units')).toEqual([['leek', 'onion', 'carrot', 'dill']]);
  expect(figureLots(of(2, 4), 'germination')).toEqual([['leek', 'onion', 'carrot', 'dill']]);
});

test('what a printed page does not hold goes on in the next figure', () => {
  expect(figureLots(of(5, 4), 'units')).toEqual([
    ['leek', 'onion'],
    ['carrot', 'dill'],
  ]);
  expect(figureLots(of(2, 9), 'germination')).toEqual([LOTS.slice(0, 8), ['kale']]);
});

test('a lot with more than one figure can hold has one to itself; so has one of more curves than a small plot keeps apart', () => {
  expect(figureLots(of(11, 2), 'units')).toEqual([['leek'], ['onion']]);
  expect(figureLots(of(7, 2), 'germination')).toEqual([['leek'], ['onion']]);
});

test('a kind that the outcome does not have stands nowhere', () => {
  expect(figureLots(of(2, 2), 'trait')).toEqual([]);
});
