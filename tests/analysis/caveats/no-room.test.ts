import { expect, test } from 'vitest';
import { noRoom } from '../../../src/analysis/caveats/no-room.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly number[], jar: readonly number[]) => {
  const trays = (counts: readonly number[]) => counts.map((count) => [count, 100] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  return noRoom(trial, [resultOf(trial)]);
};

test('every tray at 95 % or above', () => {
  expect(told([95, 97], [98, 100])).toMatchObject([
    { weight: 'note', treatment: 'jar', evidence: { lowest: 95, estimates: { treatment: 99, control: 96 } } },
  ]);
});

test('one tray at 94 % leaves some', () => {
  expect(told([94, 100], [98, 100])).toEqual([]);
});

test('a side that was not counted says nothing', () => {
  expect(told([], [98, 100])).toEqual([]);
});
