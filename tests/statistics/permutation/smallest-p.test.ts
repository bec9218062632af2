import { expect, test } from 'vitest';
import { permuteMeans } from '../../../src/statistics/permutation/permute-means.ts';
import { signFlipTest } from '../../../src/statistics/permutation/sign-flip-test.ts';
import { smallestP } from '../../../src/statistics/permutation/smallest-p.ts';
import { expectClose } from '../../support/close.ts';
import { r } from '../../support/r.ts';

const apart = (units: number) =>
  [0, 100].map((from) => Array.from({ length: units }, (_, index) => from + index)) as [number[], number[]];

test.each([4, 5, 8, 9, 12])('%s units of each: what the most extreme arrangement gets', (units) => {
  expectClose(permuteMeans(...apart(units))?.p, smallestP(units), 1e-12);
});

test.each([6, 8, 15, 24])('%s blocks: what the most extreme signs get', (blocks) => {
  const differences = Array.from({ length: blocks }, (_, index) => 10 + index);
  expectClose(signFlipTest(differences)?.p, smallestP(blocks, true), 1e-12);
});

test('up to three units of each no shuffle can show anything', async () => {
  expect([1, 2, 3].map((units) => smallestP(units))).toEqual([1, 1 / 3, 0.1]);
  expect([2, 3].map((units) => permuteMeans(...apart(units)))).toEqual([null, null]);
  const inR = await r('2 / choose(2 * 1:9, 1:9)');
  inR.forEach((p, index) => expectClose(smallestP(index + 1), p, 1e-12));
});

test('refuses what is no number of units', () => {
  expect(() => smallestP(0)).toThrow('got 0');
  expect(() => smallestP(2.5)).toThrow(RangeError);
});
