import { expect, test } from 'vitest';
import { blockDispersion } from '../../src/statistics/block-dispersion.ts';
import { hedgesG } from '../../src/statistics/hedges-g.ts';
import { hodgesLehmann } from '../../src/statistics/hodges-lehmann.ts';
import { holm } from '../../src/statistics/holm.ts';
import { intraclassCorrelation } from '../../src/statistics/intraclass-correlation.ts';
import { oneWayF } from '../../src/statistics/one-way-f.ts';
import { pairedT } from '../../src/statistics/paired-t.ts';
import { pearsonDispersion } from '../../src/statistics/pearson-dispersion.ts';
import { permuteMeans } from '../../src/statistics/permutation/permute-means.ts';
import { permuteProportions } from '../../src/statistics/permutation/permute-proportions.ts';
import { signFlipTest } from '../../src/statistics/permutation/sign-flip-test.ts';
import { randomEffects } from '../../src/statistics/pooling/random-effects.ts';
import { pooledMeans } from '../../src/statistics/pooled-means.ts';
import { pooledProportions } from '../../src/statistics/pooled-proportions.ts';
import { shareBracket } from '../../src/statistics/times/share-bracket.ts';
import { timeToShare } from '../../src/statistics/times/time-to-share.ts';
import { variance } from '../../src/statistics/variance.ts';
import { welchT } from '../../src/statistics/welch-t.ts';

/** Frozen all the way down: writing to it throws. */
function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(freeze);
  return Object.freeze(value);
}

const a = freeze([9, 3, 7, 5]);
const b = freeze([2, 8, 1, 4.5]);
const units = freeze([
  { count: 9, seeds: 10 },
  { count: 3, seeds: 12 },
  { count: 7, seeds: 10 },
  { count: 4, seeds: 9 },
]);
const pairs = freeze(units.map((treated) => ({ treated, control: { count: 2, seeds: 8 } })));
const checks = freeze([
  { day: 2, newly: 3 },
  { day: 4, newly: 5 },
]);

test.each<[string, () => unknown]>([
  ['variance', () => variance(a)],
  ['welchT', () => welchT(a, b)],
  ['pairedT', () => pairedT(a)],
  ['hedgesG', () => hedgesG(a, b, 0.95)],
  ['hodgesLehmann', () => hodgesLehmann(a, b)],
  ['holm', () => holm(freeze([0.3, 0.01, 0.2]))],
  ['oneWayF', () => oneWayF(freeze([a, b]))],
  ['intraclassCorrelation', () => intraclassCorrelation(freeze([a, b]))],
  ['permuteMeans', () => permuteMeans(a, b)],
  ['permuteProportions', () => permuteProportions(units, units)],
  ['signFlipTest', () => signFlipTest(freeze([1, 5, 2, 4, 3, 6]))],
  ['pearsonDispersion', () => pearsonDispersion(freeze([units, units]))],
  ['blockDispersion', () => blockDispersion(pairs)],
  ['pooledProportions', () => pooledProportions(pairs, { used: 1.2, dfUsed: 4 })],
  [
    'pooledMeans',
    () =>
      pooledMeans(
        freeze([
          { treated: a, control: b },
          { treated: b, control: a },
        ]),
      ),
  ],
  [
    'randomEffects',
    () =>
      randomEffects(
        freeze([
          { estimate: 3, se: 1 },
          { estimate: 9, se: 2 },
          { estimate: 4, se: 3 },
        ]),
      ),
  ],
  ['timeToShare', () => timeToShare(checks, 0.5)],
  ['shareBracket', () => shareBracket(checks, 0.5)],
])('%s leaves its input alone and answers alike twice', (_, compute) => {
  const first = compute();
  expect(first).not.toBeNull();
  expect(compute()).toEqual(first);
});
