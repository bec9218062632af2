import { expect, test } from 'vitest';
import { expectedStorage, type StorageQuestion } from '../../../src/analysis/storage/expected-storage.ts';
import { VIABILITY_CROPS } from '../../../src/analysis/storage/viability-crops.ts';
import { viabilityPeriod } from '../../../src/statistics/storage/viability-period.ts';
import reference from '../../reference/r/viability.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';

const speciesOf = (id: string) => VIABILITY_CROPS.find((crop) => crop.id === id)?.species ?? '';
const days = (question: StorageQuestion) => {
  const answer = expectedStorage(question);
  return 'days' in answer ? answer.days : answer.refused;
};

test.each(reference.cases)('$crop at $moisture %, $temperature °C, from $from to $to: as R', (expected) => {
  const { crop, moisture, temperature, from, to } = expected;
  expectClose(days({ species: speciesOf(crop), moisture, temperature, from, to }) as number, expected.days, 1e-9);
});

test('every crop is in the reference', () => {
  expect(new Set(reference.cases.map(({ crop }) => crop))).toEqual(new Set(VIABILITY_CROPS.map(({ id }) => id)));
});

// Own worked examples, computed in R 4.2.2 beforehand.
test.each([
  ['Hordeum vulgare', 10, 20, 98, 85, 1328.176],
  ['Hordeum vulgare', 10, 20, 98, 50, 2681.312],
  ['Allium cepa', 8, 15, 95, 50, 2296.704],
])('%s at %d %%, %d °C falls from %d to %d in %d days', (species, moisture, temperature, from, to, expected) => {
  expectClose(days({ species, moisture, temperature, from, to }) as number, expected, 1e-6);
});

test('drier, cooler and a longer way take longer', () => {
  const base = { species: 'Allium cepa var. cepa', moisture: 8, temperature: 20, from: 90, to: 70 };
  const least = days(base) as number;
  for (const change of [{ moisture: 7 }, { temperature: 10 }, { to: 60 }, { from: 95 }]) {
    expect(days({ ...base, ...change })).toBeGreaterThan(least);
  }
});

test('what it cannot say is refused', () => {
  const base = { species: 'Lactuca sativa', moisture: 8, temperature: 20, from: 90, to: 70 };
  expect(days({ ...base, species: 'Quercus robur' })).toBe('dies-of-drying');
  expect(days({ ...base, species: 'Acer pseudoplatanus' })).toBe('dies-of-drying');
  expect(days({ ...base, species: 'Coffea arabica' })).toBe('bears-little-drying');
  expect(days({ ...base, species: 'Allium porrum' })).toBe('no-constants');
  expect(days({ ...base, species: 'Saccharumoides' })).toBe('no-constants');
  expect(expectedStorage({ ...base, moisture: 4.9 })).toEqual({ refused: 'moisture', range: { least: 5, most: 15 } });
  expect(days({ ...base, moisture: 15.1 })).toBe('moisture');
  expect(days({ ...base, species: 'Zea mays', moisture: 20 })).toBeGreaterThan(0);
  expect(days({ ...base, moisture: NaN })).toBe('moisture');
  expect(expectedStorage({ ...base, temperature: -18 })).toEqual({ refused: 'temperature', range: { least: 0, most: 50 } }); // prettier-ignore
  expect(days({ ...base, temperature: 51 })).toBe('temperature');
  expect(days({ ...base, from: 70, to: 90 })).toBe('viability');
  expect(days({ ...base, from: 100 })).toBe('viability');
  expect(days({ ...base, to: 0 })).toBe('viability');
});

test('the equation is refused where it turns round and predicts shorter life in deeper cold', () => {
  const common = { ke: 8, cw: 4, ch: 0.0329, cq: 0.000478 };
  expect(() => viabilityPeriod(common, 5, -35)).toThrow('a temperature above -34.41');
  expect(() => viabilityPeriod(common, 0, 5)).toThrow('got 0 and 5');
});
