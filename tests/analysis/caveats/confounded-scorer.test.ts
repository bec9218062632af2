import { expect, test } from 'vitest';
import { confoundedScorer } from '../../../src/analysis/caveats/confounded-scorer.ts';
import type { Measure } from '../../../src/trial/trial.ts';
import { makeCount, makeSowing, makeTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

/** Who counted each of two packets and two jars on day 5 and on day 14. */
const told = (
  packet: readonly (string | null)[],
  jar: readonly (string | null)[],
  measure: Measure = 'germination',
) => {
  const sowings = ['p1', 'p2', 'j1', 'j2'].map((id) => makeSowing(id, id.startsWith('p') ? 'packet' : 'jar'));
  const counts = sowings.flatMap(({ id, treatment }) =>
    [5, 14].map((day, check) =>
      makeCount(id, day, day * 2, { scorer: (treatment === 'jar' ? jar : packet)[check] ?? null }),
    ),
  );
  const trial = makeTrial({ sowings, counts });
  return confoundedScorer(trial, [resultOf(trial, { measure })]);
};

test('packets counted by one and jars by another on the day', () => {
  expect(told(['ann', 'ann'], ['ann', 'bob'])).toMatchObject([
    { weight: 'serious', evidence: { values: { treatment: ['bob'], control: ['ann'] } } },
  ]);
});

test('the same person on the day, or nobody named', () => {
  expect(told(['ann', 'ann'], ['bob', 'ann'])).toEqual([]);
  expect(told([null, null], [null, 'bob'])).toEqual([]);
});

test('for speed every check counts', () => {
  expect(told(['ann', 'ann'], ['ann', 'bob'], 't50')).toEqual([]);
  expect(told(['ann', 'ann'], ['bob', 'bob'], 't50')).toHaveLength(1);
});
