import { expect, test } from 'vitest';
import { incompleteBlocks } from '../../../src/analysis/caveats/incomplete-blocks.ts';
import type { UnitKind } from '../../../src/analysis/analysis.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly (string | null)[], jar: readonly (string | null)[], kind: UnitKind = 'sowing') => {
  const trays = (blocks: readonly unknown[]) => blocks.map(() => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, block: [...packet, ...jar][index] ?? null }));
  const units = { treatment: jar.length, control: packet.length, kind };
  const comparisons = [makeComparison({ estimate: 0, parts: { units } })];
  return incompleteBlocks({ ...trial, sowings }, [resultOf({ ...trial, sowings }, { comparisons })]);
};

test('a block without a jar, two blocks only, a packet without a block', () => {
  expect(told(['A', 'B', 'C'], ['A', 'B', 'B'])).toMatchObject([
    { weight: 'caution', evidence: { reason: 'incomplete', blocks: ['A', 'B', 'C'], incomplete: ['C'], without: [] } },
  ]);
  expect(told(['A', 'B'], ['A', 'B'])).toMatchObject([{ evidence: { reason: 'two-blocks', incomplete: [] } }]);
  expect(told(['A', 'B', null], ['A', 'B', 'C'])).toMatchObject([
    { evidence: { reason: 'some-without-block', without: ['leek-packet-3'] } },
  ]);
});

test('three whole blocks are used, one block or none is nothing to use', () => {
  expect(told(['A', 'B', 'C'], ['A', 'B', 'C'], 'block')).toEqual([]);
  expect(told(['A', 'A'], ['A', 'A'])).toEqual([]);
  expect(told([null, null], [null, null])).toEqual([]);
});

test('treatments kept apart by blocks, and single trays, have caveats of their own', () => {
  expect(told(['A', 'A'], ['B', 'B'])).toEqual([]);
  expect(told(['A'], ['B'])).toEqual([]);
});
