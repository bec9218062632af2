import { expect, test } from 'vitest';
import { unevenLayout } from '../../../src/statistics/layout/uneven-layout.ts';
import { expectClose } from '../../support/close.ts';
import { r } from '../../support/r.ts';

const layout = (treated: number[], control: number[]) => unevenLayout([{ treated, control }]);

test('four of each on two shelves of four: all apart in 2 of 70 layouts', () => {
  expect(layout([4, 0], [0, 4]).unevenness).toBe(1);
  expectClose(layout([4, 0], [0, 4]).chance, 2 / 70);
  expect(layout([2, 2], [2, 2])).toEqual({ unevenness: 0, chance: 1 });
});

test('two places are the two-sided hypergeometric test of R', async () => {
  // 5 of 6 treated among the 7 at the first of two places, 13 units in all
  const [chance = NaN] = await r('k <- 0:6; d <- abs(k/6 - (7-k)/7); sum(dhyper(k, 7, 6, 6)[d >= d[6] - 1e-9])');
  expectClose(layout([5, 1], [2, 5]).chance, chance);
});

test('within blocks only the layouts of those blocks count', () => {
  // Left and right in each of four blocks: all treated left or all right in 2 of 16.
  const block = { treated: [1, 0], control: [0, 1] };
  expect(unevenLayout([block, block, block, block])).toEqual({ unevenness: 1, chance: 2 / 16 });
});

test('the chance agrees with a full enumeration over three places', () => {
  const places = [0, 0, 0, 1, 1, 2, 2, 2];
  const unevennessOf = (chosen: readonly number[]) =>
    [0, 1, 2]
      .map((place) => {
        const all = places.filter((each) => each === place).length;
        const own = chosen.filter((unit) => places[unit] === place).length;
        return Math.abs(own / 3 - (all - own) / 5);
      })
      .reduce((a, b) => a + b) / 2;
  const triples = places.flatMap((_, a) =>
    places.flatMap((__, b) => places.flatMap((___, c) => (a < b && b < c ? [[a, b, c]] : []))),
  );
  const observed = layout([3, 0, 0], [0, 2, 3]);
  const asUneven = triples.filter((triple) => unevennessOf(triple) >= observed.unevenness - 1e-9);
  expectClose(observed.chance, asUneven.length / triples.length);
});

test('which treatment is called the control makes no difference', () => {
  const one = layout([3, 1, 0], [1, 2, 2]);
  const other = layout([1, 2, 2], [3, 1, 0]);
  expectClose(one.unevenness, other.unevenness);
  expectClose(one.chance, other.chance ?? NaN);
});

test('too many layouts are not counted', () => {
  const pairs = Array.from({ length: 24 }, () => 1);
  expect(layout(pairs, pairs)).toEqual({ unevenness: 0, chance: null });
});

test('a treatment without units is refused', () => {
  expect(() => layout([0, 0], [1, 1])).toThrow('needs a unit of each');
});
