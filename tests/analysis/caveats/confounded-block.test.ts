import { expect, test } from 'vitest';
import { confoundedBlock } from '../../../src/analysis/caveats/confounded-block.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
] as const;
const told = (...blocks: (string | null)[]) => {
  const trial = germinationTrial({ packet: trays, jar: trays });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, block: blocks[index] ?? null }));
  return confoundedBlock({ ...trial, sowings }, [resultOf({ ...trial, sowings })]);
};

test('each treatment in a block of its own cannot be told from the block', () => {
  expect(told('A', 'A', 'B', 'B')).toMatchObject([{ evidence: { values: { treatment: ['B'], control: ['A'] } } }]);
});

test('blocks that hold both, or no blocks, tell nothing apart', () => {
  expect(told('A', 'B', 'A', 'B')).toEqual([]);
  expect(told('A', 'A', 'A', 'B')).toEqual([]);
  expect(told()).toEqual([]);
});
