import { expect, test } from 'vitest';
import { massAtMoisture } from '../../../src/statistics/moisture/mass-at-moisture.ts';
import { moistureAfter } from '../../../src/statistics/moisture/moisture-after.ts';
import { waterLost } from '../../../src/statistics/moisture/water-lost.ts';
import { wetBasis } from '../../../src/statistics/moisture/wet-basis.ts';
import { expectClose } from '../../support/close.ts';
import { r } from '../../support/r.ts';

test('container 19.374 g, 24.512 g fresh, 23.998 g dry: 10.004 % wet basis (R)', async () => {
  const [wet = NaN] = await r('100*(24.512-23.998)/(24.512-19.374)');
  expectClose(wetBasis(24.512, 23.998, 19.374), wet);
  expect(wet.toFixed(5)).toBe('10.00389');
});

test('500 g at 12 % weigh 473.1183 g at 7 %, 100 g at 10 % weigh 94.73684 g at 5 % (R)', () => {
  expectClose(massAtMoisture(500, 12, 7), 473.1183, 1e-7);
  expectClose(massAtMoisture(100, 10, 5), 94.73684, 1e-7);
});

test('drying to the target mass gives the target moisture back', () => {
  for (const wanted of [0, 3.5, 7, 11.9])
    expectClose(moistureAfter(12, 500, massAtMoisture(500, 12, wanted)) + 1, wanted + 1);
});

test('water lost and moisture before and after keep the dry matter', () => {
  const lost = waterLost(500, 473.1183);
  expectClose((100 - 12) / (100 - moistureAfter(12, 500, 473.1183)), (100 - lost) / 100);
});

test('water taken up counts as a negative loss', () => {
  expect(waterLost(50, 55)).toBe(-10);
});

test('impossible masses and percentages are refused', () => {
  expect(() => wetBasis(5, 4, 5)).toThrow('got 5, 5');
  expect(() => waterLost(0, 1)).toThrow('got 0');
  expect(() => moistureAfter(10, 5, 0)).toThrow('got 5, 0');
  expect(() => massAtMoisture(10, 10, 100)).toThrow('got 10, 10, 100');
});
