import { expect, test } from 'vitest';
import { confoundedPosition } from '../../../src/analysis/caveats/confounded-position.ts';
import type { Assignment } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (assignment: Assignment, packet: readonly string[], jar: readonly string[], blocks = false) => {
  const trays = (positions: readonly string[]) => positions.map(() => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  const sowings = trial.sowings.map((sowing, index) => {
    const position = [...packet, ...jar][index] ?? null;
    return { ...sowing, position, block: blocks ? (position?.split('-')[0] ?? null) : null };
  });
  const laid = { ...trial, sowings, sowing: { ...trial.sowing, assignment } };
  return confoundedPosition(laid, [resultOf(laid)]);
};

test('jars in one row and packets in the other', () => {
  expect(told('by-hand', ['1-1', '1-2', '1-3'], ['2-1', '2-2', '2-3'])).toMatchObject([
    { weight: 'serious', evidence: { by: 'row', values: { treatment: ['2'], control: ['1'] } } },
  ]);
  expect(told('by-hand', ['1-1', '2-1', '3-1'], ['1-2', '2-2', '3-2'])).toMatchObject([{ evidence: { by: 'column' } }]);
});

test('one tray swapped is enough', () => {
  expect(told('by-hand', ['1-1', '1-2', '2-3'], ['2-1', '2-2', '1-3'])).toEqual([]);
});

test('two trays of each in two rows come to stand so in a third of random draws, four of each in 2 of 70', () => {
  expect(told('by-hand', ['1-1', '1-2'], ['2-1', '2-2'])).toHaveLength(1);
  expect(told('random', ['1-1', '1-2'], ['2-1', '2-2'])).toEqual([]);
  expect(told('random', ['1-1', '1-2', '1-3', '1-4'], ['2-1', '2-2', '2-3', '2-4'])).toHaveLength(1);
});

test('where rows are the blocks of a random draw, the same column in four rows is luck, in six it is not', () => {
  const column = (rows: number, place: string) => Array.from({ length: rows }, (_, row) => `${row + 1}-${place}`);
  expect(told('random-in-blocks', column(4, '1'), column(4, '2'), true)).toEqual([]);
  expect(told('random-in-blocks', column(6, '1'), column(6, '2'), true)).toMatchObject([
    { evidence: { by: 'column' } },
  ]);
});

test('places given as text are not positions in a grid', () => {
  expect(told('by-hand', ['low', 'low', 'low'], ['high', 'high', 'high'])).toEqual([]);
});
