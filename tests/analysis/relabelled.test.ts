import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { UnitValue } from '../../src/analysis/analysis.ts';
import { relabelled } from '../../src/analysis/relabelled.ts';
import { demoTrials } from '../files/prose/prose-said.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeResult } from '../support/make-result.ts';

const unit = (treatment: string, index: number, count: number, block: string | null = null): UnitValue => ({
  lot: 'leek',
  treatment,
  stored: null,
  block,
  unit: `${treatment}-${index}`,
  sowings: [],
  seeds: 50,
  count,
  value: 2 * count,
  plants: null,
});
const of = (jar: readonly number[], packet: readonly number[]) =>
  makeResult({
    values: [...jar.map((count, i) => unit('jar', i, count)), ...packet.map((count, i) => unit('packet', i, count))],
  });
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const estimateOf = (jar: readonly number[], packet: readonly number[]) => 2 * (mean(jar) - mean(packet));

function found(jar: readonly number[], packet: readonly number[], estimate = estimateOf(jar, packet), seed = 'a') {
  return relabelled(seed, of(jar, packet), makeComparison({ estimate }));
}

describe('where there are 35 arrangements', () => {
  test.each([
    [3, 3, false],
    [4, 3, true],
    [2, 8, true],
    [2, 7, true],
    [2, 6, false],
    [1, 33, false],
    [1, 34, true],
  ])('%d and %d units: %s', (jar, packet, isShown) => {
    const values = (length: number) => Array.from({ length }, (_, index) => 20 + index);
    expect(found(values(jar), values(packet)) !== null).toBe(isShown);
  });
});

test('19 relabellings, none of them the labels as they were', () => {
  const apart = found([45, 46, 47, 48], [1, 2, 3, 4]);
  expect(apart?.others).toHaveLength(19);
  expect(apart?.real).toBe(88);
  expect(apart?.others).not.toContain(88);
});

test('the same seed deals the same, another seed otherwise', () => {
  const deal = (seed: string) => found([45, 31, 40, 22, 38], [30, 28, 19, 33, 41], undefined, seed)?.others;
  expect(deal('a')).toEqual(deal('a'));
  expect(deal('a')).not.toEqual(deal('b'));
});

test('the largest of all is as large as none of the others, save its own mirror', () => {
  const { asLarge, others } = found([45, 46, 47, 48, 49], [1, 2, 3, 4, 5]) ?? { asLarge: NaN, others: [] };
  expect(asLarge).toBe(others.filter((other) => other === -88).length);
});

test('units that are all alike show nothing of luck', () => {
  expect(found([20, 20, 20, 20], [20, 20, 20, 20])).toBeNull();
  expect(found([20, 21, 20, 20], [20, 20, 20, 20])).not.toBeNull();
});

test('in blocks labels stay within their block', () => {
  const blocks = Array.from({ length: 6 }, (_, index) => `shelf ${index}`);
  // Shelves differ by far more than treatments: across shelves a deal could differ by far more than 4.
  const values = blocks.flatMap((block, index) => [
    unit('jar', index, 8 * index + 2, block),
    unit('packet', index, 8 * index, block),
  ]);
  const comparison = makeComparison({ estimate: 4, parts: { units: { treatment: 6, control: 6, kind: 'block' } } });
  const dealt = relabelled('a', makeResult({ values }), comparison);
  expect(dealt?.others).toHaveLength(19);
  for (const other of dealt?.others ?? []) expect(Math.abs(other)).toBeLessThanOrEqual(4 + 1e-9);
  expect(relabelled('a', makeResult({ values: values.slice(0, 10) }), comparison)).toBeNull(); // 2^5 arrangements
});

test('a difference that was worked out in another way is not shown beside these', () => {
  expect(found([45, 31, 40, 22], [30, 28, 19, 33], 12)).toBeNull();
});

test('lots that were pooled are not dealt', () => {
  const comparison = makeComparison({ estimate: 8, parts: { lot: 'all' } });
  expect(relabelled('a', of([9, 9, 9, 9], [5, 5, 5, 5]), comparison)).toBeNull();
});

test('of the demonstration trials those with enough units are shown, with the difference that is said', () => {
  const shown = demoTrials.flatMap((trial) =>
    analyse(trial).results.flatMap((result) =>
      result.comparisons.flatMap((comparison) => {
        const dealt = relabelled(trial.id, result, comparison);
        if (dealt === null) return [];
        expect(dealt.real).toBeCloseTo(comparison.estimate ?? NaN, 8);
        return [`${trial.id} ${result.outcome} ${comparison.lot}: ${dealt.asLarge} of 19`];
      }),
    ),
  );
  expect(`\n${shown.join('\n')}\n`).toMatchInlineSnapshot(`
    "
    carrots-under-vermiculite germination carrot-2025: 8 of 19
    leek-shed-or-fridge germination leek-2022: 19 of 19
    leek-shed-or-fridge germination leek-2022: 6 of 19
    leek-shed-or-fridge germination leek-2022: 0 of 19
    lettuce-surface-or-covered germination lettuce-2025: 0 of 19
    lettuce-surface-or-covered leaf lettuce-2025: 2 of 19
    parsley-soaked-a-day germination parsley-2025: 0 of 19
    parsley-soaked-a-day speed parsley-2025: 0 of 19
    parsley-soaked-a-day height parsley-2025: 0 of 19
    parsnip-shed-or-jar germination parsnip-2021: 19 of 19
    parsnip-shed-or-jar germination parsnip-2021: 2 of 19
    parsnip-shed-or-jar germination parsnip-2021: 0 of 19
    parsnip-shed-or-jar germination parsnip-2021: 0 of 19
    parsnip-shed-or-jar germination parsnip-2021: 0 of 19
    peas-soaked-allotment germination pea-2025: 1 of 19
    tomato-tin-or-envelope germination tomato-lantern-2025: 16 of 19
    tomato-tin-or-envelope germination tomato-ridge-2025: 19 of 19
    "
  `);
});

test('lots that are the blocks of one comparison have their labels dealt within each', () => {
  const lots = ['a', 'b', 'c', 'd', 'e', 'f'];
  const values = lots.flatMap((lot, index) => [
    { ...unit('jar', 1, 40 + index), lot },
    { ...unit('packet', 1, 30), lot },
  ]);
  const estimate = 2 * mean(lots.map((_, index) => 10 + index));
  const comparison = makeComparison({
    estimate,
    parts: { lot: 'all', units: { treatment: 6, control: 6, kind: 'block' } },
  });
  const dealt = relabelled('a', makeResult({ values }), comparison);
  expect(dealt?.real).toBeCloseTo(estimate, 9);
  expect(dealt?.others).toHaveLength(19);
  for (const other of dealt?.others ?? []) expect(Math.abs(other)).toBeLessThan(estimate);
  expect(
    relabelled('a', makeResult({ values }), { ...comparison, units: { ...comparison.units, kind: 'sowing' } }),
  ).toBe(null);
});
