import { expect, test } from 'vitest';
import { luckOfTwo } from '../../src/statistics/luck-of-two.ts';
import { seededRandom } from '../../src/statistics/random.ts';
import { expectClose } from '../support/close.ts';
import { r } from '../support/r.ts';

test.each([
  [0.5, 25, 25, 2],
  [0.8, 20, 50, 1],
  [0.9, 100, 100, 3.5],
])('luckOfTwo matches R for a share of %d, %d and %d seeds, φ = %d', async (share, one, other, used) => {
  const sd = `sqrt(${used} * ${share} * (1 - ${share}) * (1/${one} + 1/${other}))`;
  const [half = NaN, most = NaN] = (await r(`qnorm(c(.75, .975)) * ${sd}`)) as number[];
  const found = luckOfTwo(share, one, other, used);
  expectClose(found.half, half);
  expectClose(found.most, most);
});

test('pairs of trays that share their luck differ as said: half within, 19 of 20 within', () => {
  const random = seededRandom('pairs');
  const [seeds, share, used] = [50, 0.7, 2];
  // Each tray in runs of `used` seeds that come up together: variance φ times that of single seeds.
  const tray = () => {
    let count = 0;
    for (let seed = 0; seed < seeds; seed += used) count += random() < share ? used : 0;
    return count / seeds;
  };
  const { half, most } = luckOfTwo(share, seeds, seeds, used);
  const gaps = Array.from({ length: 20_000 }, () => Math.abs(tray() - tray()));
  const within = (limit: number) => gaps.filter((gap) => gap <= limit + 1e-9).length / gaps.length;
  expect(within(half)).toBeGreaterThan(0.45);
  expect(within(half)).toBeLessThan(0.6);
  expect(within(most)).toBeGreaterThan(0.94);
  expect(within(most)).toBeLessThan(0.975);
});

test('more seeds, less luck; the same both ways', () => {
  expect(luckOfTwo(0.5, 50, 50, 2).most).toBeLessThan(luckOfTwo(0.5, 25, 50, 2).most);
  expect(luckOfTwo(0.3, 20, 60, 2)).toEqual(luckOfTwo(0.3, 60, 20, 2));
});

test.each([
  [0, 25, 25, 2],
  [1, 25, 25, 2],
  [0.5, 0, 25, 2],
  [0.5, 25, 25, 0.9],
])('luckOfTwo refuses %d, %d, %d, %d', (share, one, other, used) => {
  expect(() => luckOfTwo(share, one, other, used)).toThrow('luckOfTwo needs');
});
