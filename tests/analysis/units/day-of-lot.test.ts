import { expect, test } from 'vitest';
import { dayOfLot } from '../../../src/analysis/units/day-of-lot.ts';

const checked = (seeds: number | null, totals: Readonly<Record<number, number>>) => ({
  seeds,
  checks: Object.entries(totals).map(([day, total]) => ({ day: Number(day), total })),
});

test('the wanted day stands as soon as one sowing was checked on it', () => {
  expect(dayOfLot(14, [checked(50, { 11: 30, 14: 40 }), checked(50, { 11: 30, 15: 40 })])).toBe(14);
});

test('where none was checked on the wanted day the nearest later day on which all were takes its place', () => {
  const sowings = [checked(50, { 11: 30, 15: 40, 16: 41, 21: 44 }), checked(50, { 11: 30, 16: 40, 21: 40 })];
  expect(dayOfLot(14, sowings)).toBe(16);
});

test('without a later day the nearest earlier day on which all were checked takes its place', () => {
  const sowings = [checked(50, { 5: 3, 8: 20, 11: 30 }), checked(50, { 5: 1, 8: 19, 12: 31 })];
  expect(dayOfLot(14, sowings)).toBe(8);
});

test('without a wanted day it is the last day on which every sowing was checked', () => {
  expect(dayOfLot(null, [checked(50, { 5: 3, 8: 20, 11: 30 }), checked(50, { 5: 1, 8: 19, 12: 31 })])).toBe(8);
});

test('a sowing whose seeds have all germinated counts as checked on later days', () => {
  expect(dayOfLot(null, [checked(50, { 5: 50 }), checked(50, { 5: 1, 8: 19, 12: 31 })])).toBe(12);
});

test('but a full sowing is no check on the wanted day by itself', () => {
  expect(dayOfLot(14, [checked(50, { 5: 50 }), checked(50, { 5: 1, 8: 19, 15: 31 })])).toBe(15);
});

test('a sowing that was never checked does not hide the day on which all others were', () => {
  expect(dayOfLot(14, [checked(50, {}), checked(50, { 8: 9, 15: 31 }), checked(50, { 8: 9, 15: 30, 20: 31 })])).toBe(
    15,
  );
});

test('nothing checked has no day', () => {
  expect(dayOfLot(14, [checked(50, {})])).toBeNull();
  expect(dayOfLot(null, [])).toBeNull();
});
