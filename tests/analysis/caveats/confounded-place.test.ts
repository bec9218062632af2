import { expect, test } from 'vitest';
import { confoundedPlace } from '../../../src/analysis/caveats/confounded-place.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const trays = [
  [45, 50],
  [45, 50],
  [45, 50],
] as const;

/** Positions of packet 1 to 3, then jar 1 to 3. */
const told = (...positions: (string | null)[]) => {
  const trial = germinationTrial({ packet: trays, jar: trays });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, position: positions[index] ?? null }));
  return confoundedPlace({ ...trial, sowings }, [resultOf({ ...trial, sowings })]);
};

test('all jars on the lower shelf and all packets above: the shelf may be the cause, even if drawn at random', () => {
  expect(told('Upper', 'upper ', 'upper', 'lower', 'lower', 'lower')).toMatchObject([
    {
      weight: 'serious',
      lot: 'leek',
      treatment: 'jar',
      evidence: { treatment: 'jar', control: 'packet', values: { treatment: ['lower'], control: ['Upper'] } },
    },
  ]);
});

test('one packet among the jars is enough to tell them together', () => {
  expect(told('upper', 'upper', 'lower', 'lower', 'lower', 'lower')).toEqual([]);
});

test('every tray in a place of its own says nothing', () => {
  expect(told('A', 'B', 'C', 'D', 'E', 'F')).toEqual([]);
});

test('a place that was not recorded says nothing', () => {
  expect(told('upper', 'upper', null, 'lower', 'lower', 'lower')).toEqual([]);
});

test('rows and columns are not places', () => {
  expect(told('1-1', '1-2', '1-3', '2-1', '2-2', '2-3')).toEqual([]);
});

test('single trays are never in the same place', () => {
  const trial = germinationTrial({ packet: [[45, 50]], jar: [[45, 50]] });
  const sowings = trial.sowings.map((sowing) => ({ ...sowing, position: sowing.id }));
  expect(confoundedPlace({ ...trial, sowings }, [resultOf({ ...trial, sowings })])).toEqual([]);
});
