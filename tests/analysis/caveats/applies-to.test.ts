import { expect, test } from 'vitest';
import { appliesTo } from '../../../src/analysis/caveats/applies-to.ts';
import type { Caveat, Comparison } from '../../../src/analysis/analysis.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeCaveat, makeResult } from '../../support/make-result.ts';

const comparison = (parts: Partial<Comparison> = {}) => makeComparison({ estimate: 5, parts });
const applies = (caveat: Partial<Caveat>, to = comparison(), others: readonly Comparison[] = []) =>
  appliesTo(makeCaveat(caveat.id ?? 'plan-changed', caveat), makeResult({ comparisons: [to, ...others] }), to);

test('a caveat on the whole trial limits every comparison', () => {
  expect(applies({})).toBe(true);
});

test('one of an outcome, a lot or a treatment limits those only', () => {
  expect(applies({ outcome: 'germination' })).toBe(true);
  expect(applies({ outcome: 'height' })).toBe(false);
  expect(applies({ lot: 'leek' })).toBe(true);
  expect(applies({ lot: 'onion' })).toBe(false);
  expect(applies({ treatment: 'jar' })).toBe(true);
  expect(applies({ treatment: 'tin' })).toBe(false);
});

test('one of the control limits every comparison with it', () => {
  expect(applies({ treatment: 'packet' })).toBe(true);
  expect(applies({ treatment: 'packet' }, comparison({ treatment: 'tin' }))).toBe(true);
});

const lots = ['leek', 'onion'];
const all = comparison({ lot: 'all', lots });

test('what limits a lot limits what is pooled over it, and not the other way round', () => {
  expect(applies({ id: 'unequal-soak', lot: 'leek' }, all)).toBe(true);
  expect(applies({ id: 'unequal-soak', lot: 'cress' }, all)).toBe(false);
  expect(applies({ id: 'many-comparisons', lot: 'leek' }, all)).toBe(false);
  expect(applies({ id: 'many-comparisons', lot: 'all' }, all)).toBe(true);
  expect(applies({ lot: 'all' })).toBe(false);
});

test('over lots with one tray each, single trays and where they stood are judged together', () => {
  const units = { treatment: 1, control: 1, kind: 'sowing' } as const;
  const within = lots.map((lot) => comparison({ lot, units }));
  const over = comparison({ lot: 'all', lots, units: { treatment: 2, control: 2, kind: 'block' } });
  expect(applies({ id: 'one-sowing', lot: 'leek' }, over, within)).toBe(false);
  expect(applies({ id: 'confounded-sowing-day', lot: 'leek' }, over, within)).toBe(false);
  expect(applies({ id: 'confounded-sowing-day', lot: 'all' }, over, within)).toBe(true);
  expect(applies({ id: 'still-germinating', lot: 'leek' }, over, within)).toBe(true);
});
