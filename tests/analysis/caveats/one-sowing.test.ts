import { expect, test } from 'vitest';
import { oneSowing } from '../../../src/analysis/caveats/one-sowing.ts';
import { makeResult } from '../../support/make-result.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const tray = [45, 50] as const;

test('one tray of each cannot be told from its luck', () => {
  const trial = germinationTrial({ packet: [tray], jar: [tray] });
  expect(oneSowing(trial, [resultOf(trial)])).toMatchObject([
    {
      id: 'one-sowing',
      weight: 'serious',
      outcome: 'germination',
      lot: 'leek',
      treatment: 'jar',
      evidence: {
        treatment: 'jar',
        control: 'packet',
        unit: 'sowing',
        units: { treatment: 1, control: 1 },
        sown: { treatment: 1, control: 1 },
      },
    },
  ]);
});

test('two trays of each can', () => {
  const trial = germinationTrial({ packet: [tray, tray], jar: [tray, tray] });
  expect(oneSowing(trial, [resultOf(trial)])).toEqual([]);
});

test('one tray on one side is enough', () => {
  const trial = germinationTrial({ packet: [tray, tray, tray], jar: [tray] });
  expect(oneSowing(trial, [resultOf(trial)])).toHaveLength(1);
});

test('two trays of which one was left out are one, and two were sown', () => {
  const trial = germinationTrial({ packet: [tray, tray], jar: [tray, tray] });
  const leftOut = [{ sowing: 'leek-jar-2', reason: 'deviation' as const, what: 'dropped' }];
  expect(oneSowing(trial, [resultOf(trial, { leftOut })])[0]?.evidence).toMatchObject({
    units: { treatment: 1, control: 2 },
    sown: { treatment: 2, control: 2 },
  });
});

test('several trays without a time, because nothing came up in them, are not one', () => {
  const none = [0, 50] as const;
  const trial = germinationTrial({ packet: [tray, tray], jar: [none, none] });
  const told = (reason: 'nothing-germinated' | 'not-checked', sowings = ['leek-jar-1', 'leek-jar-2']) => {
    const leftOut = sowings.map((sowing) => ({ sowing, reason, what: null }));
    return oneSowing(trial, [resultOf(trial, { measure: 't50', leftOut })]);
  };
  expect(told('nothing-germinated')).toEqual([]);
  expect(told('nothing-germinated', ['leek-jar-1'])).toHaveLength(1);
  expect(told('not-checked')).toHaveLength(1);
});

test('without comparisons there is nothing to limit', () => {
  expect(oneSowing(germinationTrial({ packet: [tray], jar: [tray] }), [makeResult()])).toEqual([]);
});
