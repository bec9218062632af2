import { expect, test } from 'vitest';
import { oneBatch } from '../../../src/analysis/caveats/one-batch.ts';
import type { Sowing, Trial } from '../../../src/trial/trial.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeGroup, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeLot, makeSowing } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
] as const;
const trial = germinationTrial({ packet: trays, jar: trays });

/** The trial with a batch for each sowing: packet 1, packet 2, jar 1, jar 2. */
const withBatches = (...batches: (string | null)[]): Trial => ({
  ...trial,
  sowings: trial.sowings.map((sowing, index): Sowing => ({ ...sowing, batch: batches[index] ?? null })),
});
const told = (of: Trial) => oneBatch(of, [resultOf(of)]);

test('all trays of a treatment from one jar share its luck', () => {
  expect(told(withBatches(null, null, 'J1', 'J1'))).toMatchObject([
    { treatment: 'jar', evidence: { because: 'one-batch-named', batch: 'J1', sowings: 2, stored: null } },
  ]);
});

test('two jars do not', () => {
  expect(told(withBatches(null, null, 'J1', 'J2'))).toEqual([]);
});

test('trays without a batch beside trays with one are one more batch', () => {
  expect(told(withBatches(null, null, 'J1', null))).toEqual([]);
});

test('a control without a batch is untreated, one with a single batch is not', () => {
  expect(told(withBatches('P1', 'P1', 'J1', 'J2'))).toMatchObject([{ treatment: 'packet' }]);
  expect(told(withBatches('P1', 'P2', 'J1', 'J2'))).toEqual([]);
});

test('the same id under two treatments is two batches', () => {
  expect(told(withBatches('1', '2', '1', '2'))).toEqual([]);
});

test('treated at once is one batch of each treatment, but not of the control', () => {
  const atOnce = { ...trial, sowing: { ...trial.sowing, treated: 'at-once' as const } };
  expect(told(atOnce)).toMatchObject([{ treatment: 'jar', evidence: { because: 'treated-at-once', batch: null } }]);
  expect(told({ ...atOnce, sowings: withBatches(null, null, 'J1', 'J2').sowings })).toEqual([]);
});

test('each tray treated by itself needs no batches', () => {
  expect(told(trial)).toEqual([]);
});

test('single trays have that caveat already', () => {
  const single = germinationTrial(
    { packet: [[40, 50]], jar: [[40, 50]] },
    { sowing: { ...trial.sowing, treated: 'at-once' } },
  );
  expect(told(single)).toEqual([]);
});

test('lots as blocks share the luck of what was treated at once, not of a batch for each lot', () => {
  const lots = ['a', 'b', 'c'];
  const part = (lot: string) => germinationTrial({ packet: [[40, 50]], jar: [[45, 50]] }, {}, { lot });
  const over = (treated: 'at-once' | 'unknown', batch: string | null): Trial => ({
    ...trial,
    sowing: { ...trial.sowing, treated },
    lots: lots.map((lot) => makeLot(lot)),
    counts: lots.flatMap((lot) => part(lot).counts),
    sowings: lots.flatMap((lot) =>
      part(lot).sowings.map((each) => ({ ...each, batch: each.treatment === 'jar' ? batch : null })),
    ),
  });
  const toldOver = (of: Trial) => {
    const result = resultOf(of);
    const units = { treatment: 3, control: 3, kind: 'block' } as const;
    const all = makeComparison({ estimate: 5, parts: { lot: 'all', lots, units } });
    return oneBatch(of, [{ ...result, comparisons: [...result.comparisons, all] }]);
  };
  expect(toldOver(over('at-once', null))).toMatchObject([{ lot: 'all', treatment: 'jar', evidence: { sowings: 3 } }]);
  expect(toldOver(over('unknown', 'J1'))).toEqual([]);
});

test('in a storage series one jar opened at a time is told once a treatment, the start is not', () => {
  const tests = [0, 1, 2].flatMap((stored) =>
    [1, 2].map((tray) => makeSowing(`s${stored}-${tray}`, 'jar', { stored, batch: `J${stored}` })),
  );
  const groups = [0, 1, 2].map((stored) => makeGroup('jar', { stored }));
  const series = (sowings: readonly Sowing[]) =>
    oneBatch({ ...trial, sowings }, [makeResult({ outcome: 'life', measure: 'storage', groups })]);
  expect(series(tests)).toMatchObject([
    { outcome: 'life', treatment: 'jar', evidence: { stored: 1, batch: 'J1', sowings: 2 } },
  ]);
  expect(series(tests.map((sowing) => ({ ...sowing, batch: sowing.id })))).toEqual([]);
});
