import { expect, test } from 'vitest';
import { countReadings } from '../../../src/analysis/units/count-readings.ts';
import { lotDesign } from '../../../src/analysis/units/lot-design.ts';
import { lotUnits } from '../../../src/analysis/units/lot-units.ts';
import { pairedBlocks } from '../../../src/analysis/units/paired-blocks.ts';
import type { UnitGroup } from '../../../src/analysis/units/unit.ts';
import type { Sowing } from '../../../src/trial/trial.ts';
import { makeCount, makeOutcome, makeSowing, makeTreatment, makeTrial } from '../../support/make-trial.ts';

/** One sowing a row: id, treatment, and what else is known of it; every one has 40 of 50 on day 14. */
function lot(rows: readonly (readonly [id: string, treatment: string, parts?: Partial<Sowing>])[]) {
  const trial = makeTrial({
    treatments: [makeTreatment('packet', { control: true }), makeTreatment('jar'), makeTreatment('tin')],
    sowings: rows.map(([id, treatment, parts]) => makeSowing(id, treatment, parts)),
    counts: rows.map(([id]) => makeCount(id, 14, 40)),
  });
  return lotUnits(lotDesign(trial, 'leek'), countReadings(trial, makeOutcome(), 'leek'), (unit) => unit.count);
}

const shape = ({ units }: UnitGroup) => units.map(({ kind, id, count }) => `${kind} ${id} ${count}`);

test('without more information the sowing is the unit', () => {
  const { pairs } = lot([['a', 'packet'], ['b', 'packet'], ['c', 'jar'], ['d', 'jar']]); // prettier-ignore
  expect(pairs.map(({ treated, control }) => [shape(treated), shape(control)])).toEqual([
    [
      ['sowing c 40', 'sowing d 40'],
      ['sowing a 40', 'sowing b 40'],
    ],
  ]);
});

test('sowings of one treatment that share a tray are one unit', () => {
  const { groups } = lot([
    ['a', 'packet', { tray: 'T1' }],
    ['b', 'packet', { tray: 'T1' }],
    ['c', 'packet', { tray: 'T2' }],
    ['d', 'jar', { tray: 'T3' }],
  ]);
  expect(groups.map(shape)).toEqual([['tray T1 80', 'sowing c 40'], ['sowing d 40']]);
});

test('a tray that holds several treatments is a block', () => {
  const { pairs } = lot(
    ['T1', 'T2', 'T3'].flatMap((tray) => [
      [`${tray}a`, 'packet', { tray }] as const,
      [`${tray}b`, 'packet', { tray }] as const,
      [`${tray}c`, 'jar', { tray }] as const,
    ]),
  );
  const [pair] = pairs;
  expect(pair && shape(pair.control)).toEqual(['tray T1 80', 'tray T2 80', 'tray T3 80']);
  expect(pair && pairedBlocks(pair.treated, pair.control)?.map(({ block }) => block)).toEqual(['T1', 'T2', 'T3']);
});

const inBatches = (treatment: string, batches: readonly (string | null)[]) =>
  batches.map((batch, index) => [`${treatment}${index + 1}`, treatment, { batch }] as const);

test('where both treatments have two batches or more the batch is the unit', () => {
  const { groups } = lot([...inBatches('packet', ['p1', 'p1', 'p2', 'p2']), ...inBatches('jar', ['j1', 'j1', 'j2'])]);
  expect(groups.map(shape)).toEqual([
    ['batch p1 80', 'batch p2 80'],
    ['batch j1 80', 'batch j2 40'],
  ]);
});

test('the same batch id under two treatments is two batches', () => {
  const { groups } = lot([...inBatches('packet', ['1', '2']), ...inBatches('jar', ['1', '2'])]);
  expect(groups.map(shape)).toEqual([
    ['batch 1 40', 'batch 2 40'],
    ['batch 1 40', 'batch 2 40'],
  ]);
});

test('a control with no batch is untreated and keeps its sowings beside batches', () => {
  const { groups } = lot([...inBatches('packet', [null, null, null]), ...inBatches('jar', ['j1', 'j1', 'j2', 'j2'])]);
  expect(groups.map(shape)).toEqual([
    ['sowing packet1 40', 'sowing packet2 40', 'sowing packet3 40'],
    ['batch j1 80', 'batch j2 80'],
  ]);
});

test('a treatment with one batch keeps the analysis with sowings', () => {
  const control = inBatches('packet', ['p1', 'p1', 'p2', 'p2']);
  expect(lot([...control, ...inBatches('jar', ['j1', 'j1'])]).groups.map(shape)[0]).toHaveLength(4);
});

test('sowings without a batch are together one batch where their treatment names any', () => {
  const { groups } = lot([...inBatches('packet', ['p1', 'p2', null, null]), ...inBatches('jar', ['j1', 'j2'])]);
  expect(groups.map(shape)[0]).toEqual(['batch p1 40', 'batch p2 40', 'batch packet3+packet4 80']);
});

test('each comparison has its own level; the rest of the lot is never counted twice', () => {
  const { pairs } = lot([
    ...inBatches('packet', ['p1', 'p1', 'p2', 'p2']),
    ...inBatches('jar', ['j1', 'j1', 'j2', 'j2']),
    ...inBatches('tin', ['t1', 't1', 't1', 't1']),
  ]);
  const sizes = pairs.map(({ treated, control, others }) => [treated, control, ...others].map(({ units }) => units.length)); // prettier-ignore
  expect(sizes).toEqual([
    [2, 2, 4],
    [4, 4, 2],
  ]);
});

test('batches that stand in one tray of their own are one unit: they share its luck', () => {
  const { groups } = lot([
    ...inBatches('packet', ['p1', 'p2']),
    ['jar1', 'jar', { batch: 'j1', tray: 'T' }],
    ['jar2', 'jar', { batch: 'j2', tray: 'T' }],
  ]);
  expect(groups.map(({ units }) => units.length)).toEqual([2, 1]);
});

test('batches that span blocks stay the units, and blocks are not used', () => {
  const { pairs } = lot(
    ['1', '2', '3'].flatMap((block) =>
      ['packet', 'jar'].flatMap((treatment) =>
        ['x', 'y'].map((batch) => [`${treatment}${batch}${block}`, treatment, { batch, block }] as const),
      ),
    ),
  );
  const [pair] = pairs;
  expect(pair?.treated.units.map(({ kind, spansBlocks }) => [kind, spansBlocks])).toEqual([
    ['batch', true],
    ['batch', true],
  ]);
  expect(pair && pairedBlocks(pair.treated, pair.control)).toBeNull();
});

test('two blocks, or a block that lacks a treatment, are no blocks', () => {
  const inBlocks = (blocks: Readonly<Record<string, readonly string[]>>) => {
    const rows = Object.entries(blocks).flatMap(([treatment, list]) =>
      list.map((block, index) => [`${treatment}${index}`, treatment, { block }] as const),
    );
    const [pair] = lot(rows).pairs;
    return pair ? pairedBlocks(pair.treated, pair.control) : null;
  };
  expect(inBlocks({ packet: ['1', '2'], jar: ['1', '2'] })).toBeNull();
  expect(inBlocks({ packet: ['1', '2', '3', '4'], jar: ['1', '2', '3', '3'] })).toBeNull();
  expect(inBlocks({ packet: ['1', '2', '3'], jar: ['1', '2', '3', '3'] })).toHaveLength(3);
});

test('a lot without the control has groups and no comparison', () => {
  const { groups, pairs } = lot([['c', 'jar'], ['d', 'tin']]); // prettier-ignore
  expect([groups.length, pairs.length]).toEqual([2, 0]);
});

test('the start of a storage series belongs to every treatment and is compared with none', () => {
  const trial = makeTrial({
    sowings: [
      makeSowing('start', 'packet', { treatment: null, stored: 0 }),
      makeSowing('p', 'packet', { stored: 1 }),
      makeSowing('j', 'jar', { stored: 1 }),
    ],
    counts: ['start', 'p', 'j'].map((id) => makeCount(id, 14, 40)),
  });
  const { groups, pairs } = lotUnits(
    lotDesign(trial, 'leek'),
    countReadings(trial, makeOutcome(), 'leek'),
    (unit) => unit.count,
  );
  expect(groups.map(({ treatment, stored, units }) => [treatment, stored, units[0]?.id])).toEqual([
    ['packet', 0, 'start'],
    ['jar', 0, 'start'],
    ['packet', 1, 'p'],
    ['jar', 1, 'j'],
  ]);
  expect(pairs.map(({ stored, others }) => [stored, others.map(({ units }) => units[0]?.id)])).toEqual([
    [1, ['start']],
  ]);
});

test('a treatment that was given tray by tray and names no batch meets a control in batches', () => {
  const { pairs } = lot([
    ['a', 'packet', { batch: 'k0' }],
    ['b', 'packet', { batch: 'k0' }],
    ['c', 'packet', { batch: 'k1' }],
    ['d', 'jar'],
    ['e', 'jar'],
  ]);
  expect(pairs.map(({ treated, control }) => [shape(treated), shape(control)])).toEqual([
    [
      ['sowing d 40', 'sowing e 40'],
      ['batch k0 80', 'batch k1 40'],
    ],
  ]);
});

test('where only some trays hold both treatments the tray is the block, and the blocks are not whole', () => {
  const { pairs } = lot([
    ['a', 'packet', { tray: 'T1' }],
    ['b', 'jar', { tray: 'T1' }],
    ['c', 'packet', { tray: 'T2' }],
    ['d', 'jar', { tray: 'T3' }],
  ]);
  const blocks = pairs.flatMap(({ treated, control }) =>
    [...treated.units, ...control.units].map(({ block }) => block),
  );
  expect(blocks).toEqual(['T1', 'T3', 'T1', 'T2']);
});
