import { expect, test } from 'vitest';
import { DRAWS } from '../../../src/statistics/permutation/permutation-p.ts';
import { permuteMeans } from '../../../src/statistics/permutation/permute-means.ts';
import { permuteProportions } from '../../../src/statistics/permutation/permute-proportions.ts';
import { signFlipTest } from '../../../src/statistics/permutation/sign-flip-test.ts';
import reference from '../../reference/r/permutation.json' with { type: 'json' };
import { expectClose } from '../../support/close.ts';
import { maize, minus } from '../../support/published.ts';

type Expected = { arrangements: number; p: number | null };
function expectPermutation(found: ReturnType<typeof permuteMeans>, { arrangements, p }: Expected): void {
  if (p === null) expect(found).toBeNull();
  else {
    expect(found).toMatchObject({ arrangements, exact: true });
    expectClose(found?.p, p, 1e-14);
  }
}

test.each(reference.means)('means $a against $b match R', ({ a, b, ...expected }) => {
  expectPermutation(permuteMeans(a, b), expected);
});

test.each(reference.proportions.map((expected, index) => ({ index, ...expected })))(
  'proportions, case $index, match R',
  ({ a, b, ...expected }) => {
    expectPermutation(permuteProportions(a, b), expected);
  },
);

test.each(reference.signFlip)('sign flips of $differences match R', ({ differences, ...expected }) => {
  expectPermutation(signFlipTest(differences), expected);
});

// Fisher (1935), The Design of Experiments, section 21, from memory; equal to R.
test('Darwin’s maize: 1726 of 32 768 sign patterns', () => {
  expect(signFlipTest(minus(maize.cross, maize.self))).toEqual({ arrangements: 32768, exact: true, p: 1726 / 32768 });
});

test('a published p by draws: maize unpaired, 0.022076526 (R, all arrangements), within four standard errors', () => {
  const found = permuteMeans(maize.cross, maize.self);
  expect(found).toMatchObject({ arrangements: DRAWS, exact: false });
  const p = 0.022076526;
  expect(Math.abs((found?.p ?? NaN) - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / DRAWS) + 1 / DRAWS);
});

test('drawn sign patterns agree with all of them', () => {
  const d = minus(maize.cross, maize.self);
  const found = signFlipTest([...d, 1e-6]); // one block more: too many to look at all
  expect(found).toMatchObject({ arrangements: DRAWS, exact: false });
  const p = 1726 / 32768;
  expect(Math.abs((found?.p ?? NaN) - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / DRAWS) + 1e-3);
});

test('draws repeat with the seed and are never 0', () => {
  const [low, high] = [Array.from({ length: 10 }, (_, i) => i), Array.from({ length: 10 }, (_, i) => 100 + i)];
  expect(permuteMeans(low, high, 'a')).toEqual(permuteMeans(low, high, 'a'));
  expect(permuteMeans(low, high)?.p).toBeGreaterThanOrEqual(1 / (DRAWS + 1));
  expect(permuteMeans(low, high)?.p).toBeLessThan(0.001);
  expect(permuteMeans(maize.cross, maize.self, 'a')?.p).not.toBe(permuteMeans(maize.cross, maize.self, 'b')?.p);
});

test('three units against three can never show anything, four against four can', () => {
  expect(permuteMeans([1, 2, 3], [7, 8, 9])).toBeNull();
  expect(permuteMeans([1, 2, 3, 4], [7, 8, 9, 10])?.p).toBe(2 / 70);
});

test('five blocks can never show anything, six can', () => {
  expect(signFlipTest([1, 2, 3, 4, 5])).toBeNull();
  expect(signFlipTest([1, 2, 3, 4, 5, 6])?.p).toBe(2 / 64);
});

test('all units alike: nothing to be had, exact or drawn', () => {
  const alike = Array.from({ length: 12 }, () => 4.2);
  expect(permuteMeans(alike, alike)).toBeNull();
  expect(signFlipTest(Array.from({ length: 20 }, () => 0))).toBeNull();
});

test('order, swap, shift and unit do not matter', () => {
  const [a, b] = [
    [3.1, 4.2, 5.3, 7.4],
    [5.2, 6.1, 7.7, 8.8, 9],
  ];
  const p = permuteMeans(a, b)?.p ?? NaN;
  expect(permuteMeans([...a].reverse(), b)?.p).toBe(p);
  expect(permuteMeans(b, a)?.p).toBe(p);
  expect(
    permuteMeans(
      a.map((x) => 1e6 + 0.1 * x),
      b.map((x) => 1e6 + 0.1 * x),
    )?.p,
  ).toBe(p);
});

test('equal trays: proportions and means agree', () => {
  const [a, b] = [
    [48, 47, 49, 50],
    [40, 41, 42, 47],
  ];
  const units = (counts: readonly number[]) => counts.map((count) => ({ count, seeds: 50 }));
  expect(permuteProportions(units(a), units(b))).toEqual(permuteMeans(a, b));
});

test('each refuses what it cannot read', () => {
  expect(() => permuteMeans([], [1])).toThrow('permuteMeans needs 1 finite values or more, got []');
  expect(() => permuteProportions([], [{ count: 1, seeds: 2 }])).toThrow('got 0 and 1');
  expect(() => permuteProportions([{ count: 3, seeds: 2 }], [{ count: 1, seeds: 2 }])).toThrow('got 3 of 2');
  expect(() => signFlipTest([NaN])).toThrow(RangeError);
});
