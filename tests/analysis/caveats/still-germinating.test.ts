import { expect, test } from 'vitest';
import { stillGerminating } from '../../../src/analysis/caveats/still-germinating.ts';
import type { Result } from '../../../src/analysis/analysis.ts';
import { makeCount, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

type Checks = readonly (readonly [day: number, germinated: number])[];
const settled: Checks = [
  [5, 20],
  [11, 45],
  [14, 45],
];
const told = (jar: Checks, parts: Partial<Result> = {}) => {
  const sowings = ['p1', 'p2', 'j1', 'j2'].map((id) => makeSowing(id, id.startsWith('p') ? 'packet' : 'jar'));
  const counts = sowings.flatMap(({ id }) =>
    (id === 'j1' ? jar : settled).map(([day, count]) => makeCount(id, day, count)),
  );
  const trial = makeTrial({ sowings, counts });
  return stillGerminating(trial, [resultOf(trial, parts)]);
};

test('5 of 100 seeds in the last three days are 5 %', () => {
  expect(
    told([
      [5, 20],
      [11, 40],
      [14, 45],
    ]),
  ).toMatchObject([
    {
      weight: 'caution',
      outcome: 'germination',
      lot: 'leek',
      treatment: 'jar',
      evidence: { added: 5, seeds: 100, percent: 5, from: 11, to: 14 },
    },
  ]);
});

test('4 of 100 are not', () => {
  expect(
    told([
      [5, 20],
      [11, 40],
      [14, 44],
    ]),
  ).toEqual([]);
});

test('the last check counts, even where the outcome stops earlier', () => {
  expect(
    told(
      [
        [5, 20],
        [11, 40],
        [14, 45],
      ],
      { day: 11 },
    ),
  ).toHaveLength(1);
  expect(
    told(
      [
        [5, 20],
        [11, 45],
        [14, 45],
      ],
      { day: 11 },
    ),
  ).toEqual([]);
});

test('a last check that one tray missed is none', () => {
  expect(
    told([
      [5, 20],
      [11, 40],
    ]),
  ).toMatchObject([{ evidence: { from: 5, to: 11 } }]);
});

test('where all are up none is left to come', () => {
  const trial = (last: number) => {
    const counts = [makeCount('j1', 11, 30), makeCount('j1', 14, last)];
    return makeTrial({ sowings: [makeSowing('j1', 'jar')], counts });
  };
  expect(stillGerminating(trial(50), [resultOf(trial(50))])).toEqual([]);
  expect(stillGerminating(trial(49), [resultOf(trial(49))])).toHaveLength(1);
});

test('with one check nothing can be told', () => {
  const trial = makeTrial({ sowings: [makeSowing('j1', 'jar')], counts: [makeCount('j1', 14, 45)] });
  expect(stillGerminating(trial, [resultOf(trial)])).toEqual([]);
});

test('heights do not germinate', () => {
  expect(
    told(
      [
        [5, 20],
        [11, 40],
        [14, 45],
      ],
      { measure: 'trait' },
    ),
  ).toEqual([]);
});
