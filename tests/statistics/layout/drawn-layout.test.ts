import { expect, test } from 'vitest';
import { drawnLayout, type LayoutDesign } from '../../../src/statistics/layout/drawn-layout.ts';
import { seededRandom } from '../../../src/statistics/random.ts';

const design: LayoutDesign = { strata: ['a', 'b'], treatments: ['x', 'y', 'z'], each: 4, inBlocks: false };
const draw = (parts: Partial<LayoutDesign>, places = 'open', assignment = 'secret') =>
  drawnLayout({ ...design, ...parts }, seededRandom(places), seededRandom(assignment));
const counted = (items: readonly object[]) =>
  Object.entries(Object.groupBy(items, (item) => JSON.stringify(item))).map(([key, all]) => `${all?.length} ${key}`);

test('every treatment has its units in every stratum', () => {
  const kinds = counted(draw({}).map(({ stratum, treatment }) => ({ stratum, treatment })));
  expect(kinds.length).toBe(6);
  expect(kinds.every((kind) => kind.startsWith('4 '))).toBe(true);
});

test('in blocks, every block holds one of each', () => {
  const places = draw({ inBlocks: true });
  expect(places.map(({ block }) => block)).toEqual([1, 2, 3, 4].flatMap((block) => Array(6).fill(block)));
  expect(new Set(places.map((place) => JSON.stringify(place))).size).toBe(24);
});

test('the same seeds draw the same layout, others another', () => {
  expect(draw({})).toEqual(draw({}));
  expect(draw({})).not.toEqual(draw({}, 'open', 'other'));
});

test('where the strata stand tells nothing of the treatments: another secret leaves it as it is', () => {
  const strata = (secret: string) => draw({}, 'open', secret).map(({ stratum }) => stratum);
  expect(strata('one')).toEqual(strata('two'));
});

test('every assignment is drawn equally often', () => {
  const random = seededRandom(1);
  const small = { strata: ['a'], treatments: ['x', 'y'], each: 2, inBlocks: false };
  const drawn = Array.from({ length: 6000 }, () => drawnLayout(small, random, random).map(({ treatment }) => treatment).join('')); // prettier-ignore
  const times = Object.values(Object.groupBy(drawn, (layout) => layout)).map((all) => all?.length ?? 0);
  expect(times.length).toBe(6);
  const chiSquare = times.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  expect(chiSquare).toBeLessThan(20.5); // R: qchisq(0.999, 5) = 20.51501
});
