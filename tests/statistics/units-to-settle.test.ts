import { expect, test } from 'vitest';
import { detectableProportion } from '../../src/statistics/detectable-proportion.ts';
import { unitsForMean } from '../../src/statistics/units-for-mean.ts';
import { unitsForProportion } from '../../src/statistics/units-for-proportion.ts';
import { unitsToSettle } from '../../src/statistics/units-to-settle.ts';
import reference from '../reference/r/planning.json' with { type: 'json' };

// The first two are 63.77 and 25.52 in R, the published sample sizes of its documentation’s kind (sources.md 5.15).
test.each(reference.units)('a difference of $difference at sd $sd: power.t.test of R', ({ difference, sd, units }) => {
  expect(unitsForMean(difference, sd)).toBe(units);
});

test('so many trays show the difference, one fewer would not', () => {
  const tray = { share: 0.75, seeds: 50, used: 2 };
  const units = unitsForProportion(0.1, tray) ?? NaN;
  const shown = (k: number) =>
    detectableProportion({ share: 0.75, control: 50 * k, treated: 50 * k, used: 2, dfUsed: 2 * k - 1 }) ?? NaN;
  expect(shown(units)).toBeLessThanOrEqual(0.1);
  expect(shown(units - 1)).toBeGreaterThan(0.1);
});

test('as many as by counting up from two, whatever the share, the trays and their spread', () => {
  for (const share of [0.02, 0.5, 0.93])
    for (const seeds of [10, 100])
      for (const used of [1, 6]) {
        const isShown = (k: number) =>
          (detectableProportion({ share, control: seeds * k, treated: seeds * k, used, dfUsed: 2 * k - 1 }) ?? 1) <=
          0.15;
        let units = 2;
        while (!isShown(units)) units++;
        expect(unitsForProportion(0.15, { share, seeds, used })).toBe(units);
      }
});

test('a smaller difference, fuller spread or smaller trays take more units', () => {
  const tray = { share: 0.75, seeds: 50, used: 2 };
  const units = unitsForProportion(0.1, tray) ?? NaN;
  expect(unitsForProportion(0.05, tray)).toBeGreaterThan(units);
  expect(unitsForProportion(0.1, { ...tray, used: 4 })).toBeGreaterThan(units);
  expect(unitsForProportion(0.1, { ...tray, seeds: 25 })).toBeGreaterThan(units);
});

test('never fewer than two, null beyond a thousand', () => {
  expect(unitsForMean(1000, 1)).toBe(2);
  expect(unitsForMean(0.001, 1)).toBeNull();
  expect(unitsToSettle(1, () => null)).toBeNull();
});

test('refuses a difference of 0', () => {
  expect(() => unitsToSettle(0, () => 1)).toThrow('got 0');
});

test('any guess leads to the same number', () => {
  for (const settles of [2, 3, 17, 18, 500, 999, 1000, 1001]) {
    const detectable = (units: number) => settles / units;
    const found = [1, 2, 16, 400, 1000, 5000, Infinity].map((guess) => unitsToSettle(1, detectable, guess));
    expect(new Set(found)).toEqual(new Set([settles > 1000 ? null : settles]));
  }
});
