import { expect, test } from 'vitest';
import { positionsUnbalanced } from '../../../src/analysis/caveats/positions-unbalanced.ts';
import type { Assignment } from '../../../src/trial/trial.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (assignment: Assignment, packet: readonly string[], jar: readonly string[]) => {
  const trays = (positions: readonly string[]) => positions.map(() => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, position: [...packet, ...jar][index] ?? null }));
  const laid = { ...trial, sowings, sowing: { ...trial.sowing, assignment } };
  return positionsUnbalanced(laid, [resultOf(laid)]);
};
const six = (lower: number) => Array.from({ length: 6 }, (_, tray) => (tray < lower ? 'lower' : 'upper'));
const eight = (lower: number) => Array.from({ length: 8 }, (_, tray) => (tray < lower ? 'lower' : 'upper'));

test('five of six jars below and five of six packets above', () => {
  expect(told('by-hand', six(1), six(5))).toMatchObject([
    {
      weight: 'caution',
      treatment: 'jar',
      evidence: {
        by: 'place',
        places: [
          { place: 'lower', treatment: 5, control: 1 },
          { place: 'upper', treatment: 1, control: 5 },
        ],
        chance: null,
      },
    },
  ]);
});

test('four against two is not more than half of the trays', () => {
  expect(told('by-hand', six(2), six(4))).toEqual([]);
  expect(told('by-hand', six(2), six(5))).toEqual([]);
});

test('a random draw is as uneven as five against one in 1 of 12, which is luck; seven of eight is not', () => {
  expect(told('random', six(1), six(5))).toEqual([]);
  expect(told('random', eight(1), eight(7))).toMatchObject([{ evidence: { chance: expect.closeTo(130 / 12870, 12) } }]);
});

test('wholly apart is another caveat', () => {
  expect(told('by-hand', six(0), six(6))).toEqual([]);
});

test('rows and columns count as well', () => {
  const packet = ['1-1', '1-2', '1-3', '2-4'];
  const jar = ['2-1', '2-2', '2-3', '2-5'];
  expect(told('alternating', packet, jar)).toMatchObject([{ evidence: { by: 'row' } }]);
});

test('places that hardly any tray shares tell nothing', () => {
  expect(told('by-hand', ['a', 'b', 'c', 'd'], ['a', 'e', 'f', 'g'])).toEqual([]);
});
