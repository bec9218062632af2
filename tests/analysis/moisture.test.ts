import { expect, test } from 'vitest';
import { moistureOf } from '../../src/analysis/moisture.ts';
import type { Lot, Weighing } from '../../src/trial/trial.ts';
import { expectClose } from '../support/close.ts';
import { makeLot, makeTrial } from '../support/make-trial.ts';

const weigh = (stage: Weighing['stage'], mass: number, parts: Partial<Weighing> = {}): Weighing => ({
  lot: 'leek',
  treatment: 'jar',
  stage,
  mass,
  container: null,
  repeat: null,
  scaleStep: null,
  batch: null,
  date: null,
  line: 2,
  ...parts,
});
const moisture = (weighings: readonly Weighing[], lot: Partial<Lot> = {}) =>
  moistureOf(makeTrial({ weighings, lots: [{ ...makeLot('leek'), ...lot }] }));

test('without moisture at the start only water lost can be said', () => {
  expect(moisture([weigh('before', 500), weigh('after', 475)])).toEqual([
    {
      lot: 'leek',
      treatment: 'jar',
      waterLost: 5,
      moistureBefore: null,
      moistureAfter: null,
      waterLostRange: null,
      moistureAfterRange: null,
      batch: null,
      repeat: null,
    },
  ]);
});

test('500 g at 12 % that weigh 473.1183 g are at 7 % (sources.md 2.1, R)', () => {
  const [row] = moisture([weigh('before', 500), weigh('after', 473.1183)], { moisture: 12 });
  expect(row?.moistureBefore).toBe(12);
  expectClose(row?.moistureAfter, 7, 1e-6);
});

test('oven-drying a sample with its container gives the moisture at the start (sources.md 2.1, R)', () => {
  const sample = { treatment: null, container: 19.374 };
  const rows = moisture([
    weigh('before', 24.512, sample),
    weigh('oven-dry', 23.998, sample),
    weigh('before', 100),
    weigh('after', 95),
  ]);
  expect(rows.map(({ treatment }) => treatment)).toEqual([null, 'jar']);
  expect(rows[0]?.waterLost).toBeNull();
  expectClose(rows[0]?.moistureBefore, 10.00389, 1e-6);
  expectClose(rows[1]?.moistureAfter, 100 - (100 - 10.00389) / 0.95, 1e-5);
});

test('samples of a lot are averaged, and go before what is known of the lot', () => {
  const sample = (repeat: string) => ({ treatment: null, repeat });
  const rows = moisture(
    [
      weigh('before', 10, sample('1')),
      weigh('oven-dry', 9, sample('1')),
      weigh('before', 10, sample('2')),
      weigh('oven-dry', 8.8, sample('2')),
      weigh('before', 100),
      weigh('after', 98),
    ],
    { moisture: 20 },
  );
  expectClose(rows.at(-1)?.moistureBefore, 11);
});

test('seed that was itself oven-dried needs no other', () => {
  const [row] = moisture([weigh('before', 100), weigh('after', 95), weigh('oven-dry', 88)], { moisture: 20 });
  expectClose(row?.moistureBefore, 12);
  expectClose(row?.moistureAfter, (100 * 7) / 95);
  expect(row?.waterLost).toBe(5);
});

test('a sample taken after treatment gives moisture after, not water lost', () => {
  const [row] = moisture([weigh('after', 10, { repeat: 'oven' }), weigh('oven-dry', 9.4, { repeat: 'oven' })]);
  expect(row?.waterLost).toBeNull();
  expectClose(row?.moistureAfter, 6);
});

test('steps of 1 g let 74 g and 71 g stand for 2.7 to 5.4 % lost', () => {
  const [row] = moisture([weigh('before', 74, { scaleStep: 1 }), weigh('after', 71, { scaleStep: 1 })], {
    moisture: 10,
  });
  expectClose(row?.waterLostRange?.lower, (100 * 2) / 73.5);
  expectClose(row?.waterLostRange?.upper, (100 * 4) / 74.5);
  expectClose(row?.moistureAfterRange?.lower, 100 - (90 * 74.5) / 70.5);
  expectClose(row?.moistureAfterRange?.upper, 100 - (90 * 73.5) / 71.5);
});

test('the error of a shared container hardly matters, that of two containers adds up', () => {
  const inJar = (container: number) => ({ container, scaleStep: 1 });
  const width = (weighings: readonly Weighing[]) => {
    const range = moisture(weighings)[0]?.waterLostRange;
    return (range?.upper ?? NaN) - (range?.lower ?? NaN);
  };
  const shared = width([weigh('before', 174, inJar(100)), weigh('after', 171, inJar(100))]);
  const two = width([weigh('before', 174, inJar(100)), weigh('after', 161, inJar(90))]);
  expect(shared).toBeGreaterThan(2.65);
  expect(shared).toBeLessThan(2.85);
  expect(two).toBeGreaterThan(5);
});

test('no range without the step of both readings, or with steps as large as the seed', () => {
  const range = (before: number | null, after: number | null, mass = 74) =>
    moisture([weigh('before', mass, { scaleStep: before }), weigh('after', mass - 0.1, { scaleStep: after })])[0]
      ?.waterLostRange;
  expect(range(1, 1)).not.toBeNull();
  expect(range(1, null)).toBeNull();
  expect(range(1, 1, 0.4)).toBeNull();
});

test('a moisture below zero is no moisture', () => {
  expect(moisture([weigh('before', 100), weigh('after', 80)], { moisture: 10 })[0]).toMatchObject({
    waterLost: 20,
    moistureAfter: null,
  });
});

test('batches and repeats stand apart, in the same order whatever the order of rows', () => {
  const rows = [
    weigh('before', 100, { batch: 'J2' }),
    weigh('after', 90, { batch: 'J2' }),
    weigh('before', 100, { batch: 'J1', repeat: '2' }),
    weigh('after', 95, { batch: 'J1', repeat: '2' }),
    weigh('before', 100, { batch: 'J1', repeat: '1' }),
    weigh('after', 96, { batch: 'J1', repeat: '1' }),
  ];
  expect(moisture(rows).map(({ batch, repeat, waterLost }) => [batch, repeat, waterLost])).toEqual([
    ['J1', '1', 4],
    ['J1', '2', 5],
    ['J2', null, 10],
  ]);
  expect(moisture(rows.toReversed())).toEqual(moisture(rows));
});

test('of several weighings the first before and the last after stand', () => {
  const on = (date: string) => ({ date });
  const rows = [
    weigh('after', 94, on('2026-03-09')),
    weigh('after', 97, on('2026-03-05')),
    weigh('before', 100, on('2026-03-01')),
  ];
  expect(moisture(rows)[0]?.waterLost).toBe(6);
});

test('what was weighed once only, or an empty container, says nothing', () => {
  expect(moisture([weigh('before', 100)])).toEqual([]);
  expect(moisture([weigh('before', 20, { container: 20 }), weigh('after', 19)])).toEqual([]);
});
