import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { retestPlan } from '../../../src/analysis/storage/retest-plan.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { alike, storageTrial } from '../../support/storage-trial.ts';

const words = wordsFor('en');
const storage = { started: '2024-03-01', tests: [0, 1, 2, 3.5, 5], left: { packet: 1, jar: 3 } };
const series = storageTrial(
  { start: alike({ 0: 48 }, 3), packet: alike({ 1: 44, 2: 20 }), jar: alike({ 1: 46, 2: 42 }) },
  { storage },
);
function said(trial: Trial, level: number | null): string {
  const plan = retestPlan(trial, analyse(trial), level);
  return plan === null ? '' : words.retest(trial, plan, level).join('\n');
}

test('when to test again, what is left, how it stands', () => {
  expect(said(series, 85)).toMatchInlineSnapshot(`
    "Next test: after 3.5 years of storage, on 31 August 2027. Then after 5 years of storage, on 1 March 2029.
    Packets or jars left: Paper packet 1 and Sealed jar 3.
    That is not enough for all 2 tests planned: Paper packet for none like the last, which opened 2; Sealed jar for 1 like the last, which opened 2.
    This group grows a lot anew once less than 85 % of what came up at the start still does.
    Paper packet seed: the level is 82 of 100; after 2 years 40 of 100 came up (29 to 52), below it.
    Sealed jar seed: the level is 82 of 100; after 2 years 84 of 100 came up (74 to 91), too near to tell on which side."
  `);
});

test('one test to come, no date; all sown and enough left', () => {
  expect(said({ ...series, storage: { started: null, tests: [1, 2, 5], left: { jar: 1 } } }, null))
    .toMatchInlineSnapshot(`
      "Next test: after 5 years of storage.
      Packets or jars left: Sealed jar 1.
      That is not enough for the next test: Sealed jar for none like the last, which opened 2."
    `);
  expect(said({ ...series, storage: { ...storage, tests: [1, 2] } }, null)).toMatchInlineSnapshot(`
    "All tests that were planned are sown.
    Packets or jars left: Paper packet 1 and Sealed jar 3."
  `);
});
