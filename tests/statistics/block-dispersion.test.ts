import { expect, test } from 'vitest';
import { blockDispersion } from '../../src/statistics/block-dispersion.ts';
import { pairedT } from '../../src/statistics/paired-t.ts';
import reference from '../reference/r/dispersion.json' with { type: 'json' };
import { expectClose } from '../support/close.ts';

const pair = (treated: number, control: number, seeds = 50) => ({
  treated: { count: treated, seeds },
  control: { count: control, seeds },
});
const blocks = [pair(45, 40), pair(40, 31), pair(48, 45), pair(39, 37)];

test.each(reference.blocks.map((expected, index) => ({ index, ...expected })))('case $index matches R', (expected) => {
  const found = blockDispersion(expected.blocks);
  expectClose(found.difference, expected.difference);
  if (expected.phi < 1e-20) expect(found.phi).toBe(0);
  else expectClose(found.phi, expected.phi);
  expect([found.df, found.dfUsed]).toEqual([expected.df, expected.dfUsed]);
  expectClose(found.used, expected.used);
  expectClose(found.statistic, expected.statistic);
  expectClose(found.p, expected.p);
  for (const group of ['treated', 'control'] as const) {
    expectClose(found[group].share, expected[group].share);
    expectClose(found[group].size, expected[group].size);
  }
});

test('the order of blocks does not matter; swapping the treatments turns the sign', () => {
  const found = blockDispersion(blocks);
  expectClose(blockDispersion([...blocks].reverse()).p, found.p);
  const swapped = blockDispersion(blocks.map(({ treated, control }) => ({ treated: control, control: treated })));
  expectClose(swapped.statistic, -found.statistic);
  expect(swapped.treated).toEqual(found.control);
});

test('what differs from block to block, but alike for both treatments, does not count as spread', () => {
  const even = blockDispersion([pair(45, 40), pair(25, 20), pair(35, 30)]);
  expect(even.phi).toBe(0);
  expectClose(even.used, 1);
});

test('with much spread it nears the paired t test of the block differences', () => {
  const wide = Array.from({ length: 40 }, (_, index) =>
    pair(index % 2 === 0 ? 950 : 400, index % 3 === 0 ? 700 : 300, 1000),
  );
  const t = pairedT(wide.map(({ treated, control }) => (treated.count - control.count) / 1000));
  expectClose(blockDispersion(wide).statistic, t?.statistic ?? NaN, 0.02);
});

test('everything up in all blocks still leaves a standard error', () => {
  const full = blockDispersion([pair(50, 50), pair(50, 50), pair(50, 50)]);
  expect(full).toMatchObject({ difference: 0, statistic: 0, phi: 0, p: 1 });
});

test('refuses a single block', () => {
  expect(() => blockDispersion([pair(45, 40)])).toThrow('blockDispersion needs two blocks or more, got 1');
});
