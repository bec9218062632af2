import { expect, test } from 'vitest';
import { chosenResult } from '../../../src/files/prose/chosen-result.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeAnalysis, makeGroup, makeResult } from '../../support/make-result.ts';

const analysis = makeAnalysis({
  results: [
    makeResult({ outcome: 'height', primary: false }),
    makeResult({
      groups: [makeGroup('jar'), makeGroup('jar', { lot: 'cress' })],
      comparisons: [
        makeComparison({ estimate: 3 }),
        makeComparison({ estimate: 4, parts: { treatment: 'freezer' } }),
        makeComparison({ estimate: 5, parts: { lot: 'cress' } }),
      ],
    }),
  ],
});

test('without a choice it is the primary outcome, its first lot, every treatment', () => {
  const { result, lot, comparisons } = chosenResult('Result', analysis, {});
  expect([result.outcome, lot, comparisons.map(({ estimate }) => estimate)]).toEqual(['germination', 'leek', [3, 4]]);
});

test('a named treatment stands alone', () => {
  expect(
    chosenResult('Result', analysis, { treatment: 'freezer' }).comparisons.map(({ estimate }) => estimate),
  ).toEqual([4]);
});

test.each([
  [
    { outcome: 'germinaton' },
    '<Result outcome>: found "germinaton"; allowed: germination, height. Did you mean "germination"?',
  ],
  [{ lot: 'leeks' }, '<Result lot>: found "leeks"; allowed: leek, cress. Did you mean "leek"?'],
  [{ treatment: 'packet' }, '<Result treatment>: found "packet"; allowed: jar, freezer. Known here: jar, freezer.'],
])('says what was given, what is allowed and what was meant: %j', (choice, message) => {
  expect(() => chosenResult('Result', analysis, choice)).toThrow(message);
});

test('a trial without results says so', () => {
  expect(() => chosenResult('Num', makeAnalysis({ results: [] }), {})).toThrow(
    '<Num outcome>: this trial has nothing to show there. Take the component out.',
  );
});
