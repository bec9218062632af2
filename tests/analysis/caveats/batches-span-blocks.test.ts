import { expect, test } from 'vitest';
import { batchesSpanBlocks } from '../../../src/analysis/caveats/batches-span-blocks.ts';
import { incompleteBlocks } from '../../../src/analysis/caveats/incomplete-blocks.ts';
import type { Rule } from '../../../src/analysis/caveats/rule.ts';
import type { UnitKind } from '../../../src/analysis/analysis.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [45, 45, 45, 45].map((count) => [count, 50] as const);

/** Four packets and four jars in blocks A, A, B, B; jars of batch J1 and J2, packets of P1 and P2. */
const told = (rule: Rule, jars: readonly string[], kind: UnitKind) => {
  const trial = germinationTrial({ packet: trays, jar: trays });
  const sowings = trial.sowings.map((sowing, index) => ({
    ...sowing,
    block: index % 4 < 2 ? 'A' : 'B',
    batch: ['P1', 'P1', 'P2', 'P2', ...jars][index] ?? null,
  }));
  const laid = { ...trial, sowings };
  const { values } = resultOf(laid);
  const units = { treatment: 2, control: 2, kind };
  const merged = ['P1', 'P2', 'J1', 'J2'].flatMap((batch) => {
    const members = sowings.filter((sowing) => sowing.batch === batch).map(({ id }) => id);
    const [value] = values.filter(({ unit }) => members.includes(unit));
    return value === undefined ? [] : [{ ...value, unit: batch, sowings: members }];
  });
  const comparisons = [makeComparison({ estimate: 0, parts: { units } })];
  return rule(laid, [resultOf(laid, { values: merged, comparisons })]);
};

test('jars of one batch in both blocks', () => {
  expect(told(batchesSpanBlocks, ['J1', 'J2', 'J1', 'J2'], 'batch')).toMatchObject([
    { weight: 'note', treatment: 'jar', evidence: { batches: [{ treatment: 'jar', batch: 'J1' }, { batch: 'J2' }] } },
  ]);
  expect(told(incompleteBlocks, ['J1', 'J2', 'J1', 'J2'], 'batch')).toEqual([]);
});

test('each batch within a block: too few blocks, that is all', () => {
  expect(told(batchesSpanBlocks, ['J1', 'J1', 'J2', 'J2'], 'batch')).toEqual([]);
  expect(told(incompleteBlocks, ['J1', 'J1', 'J2', 'J2'], 'batch')).toMatchObject([
    { evidence: { reason: 'two-blocks' } },
  ]);
});

test('where trays are the units, batches do not matter', () => {
  expect(told(batchesSpanBlocks, ['J1', 'J2', 'J1', 'J2'], 'sowing')).toEqual([]);
});
