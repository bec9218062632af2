import { expect, test } from 'vitest';
import type { Comparison } from '../../src/analysis/analysis.ts';
import { frontPage, isFirm, type Published } from '../../src/report/front-page.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeAnalysis, makeResult } from '../support/make-result.ts';
import { makeTrial } from '../support/make-trial.ts';

function published(id: string, trial: Partial<Trial>, found: Partial<Comparison> | null = {}): Published {
  const comparisons = [makeComparison({ estimate: 5, parts: { verdict: 'different', ...found } })];
  return {
    trial: makeTrial({ id, ...trial }),
    analysis: makeAnalysis({ trial: id, results: found === null ? [] : [makeResult({ comparisons })] }),
  };
}
const ids = (entries: readonly Published[]) => entries.map(({ trial }) => trial.id);

test('the last finished stands first; equal dates go by name', () => {
  const page = frontPage([
    published('b', { finished: '2026-05-01' }),
    published('a', { finished: '2026-05-01' }),
    published('old', { sown: '2024-03-01' }),
    published('new', { sown: '2026-06-01' }),
  ]);
  expect(ids(page.newest)).toEqual(['new', 'a', 'b', 'old']);
});

test('firm is only what was decided and is capped by nothing', () => {
  const page = frontPage([
    published('matters', {}, { verdict: 'matters' }),
    published('alike', {}, { verdict: 'same' }),
    published('probably', {}, { verdict: 'matters', ceiling: 'probably' }),
    published('cause', {}, { verdict: 'different', ceiling: 'cause-unclear' }),
    published('unclear', {}, { verdict: 'unclear' }),
    published('one-tray', {}, { verdict: 'untestable' }),
  ]);
  expect(ids(page.firmest)).toEqual(['alike', 'matters']);
});

test('of stored seed only the last test can be firm', () => {
  const tests = (...verdicts: Comparison['verdict'][]): Published => {
    const comparisons = verdicts.map((verdict, index) =>
      makeComparison({ estimate: 5, parts: { verdict, stored: index + 1 } }),
    );
    return {
      trial: makeTrial({ id: verdicts.join() }),
      analysis: makeAnalysis({ results: [makeResult({ comparisons })] }),
    };
  };
  const page = frontPage([tests('same', 'different'), tests('same', 'unclear')]);
  expect(ids(page.firmest)).toEqual(['same,different']);
  const [result] = page.firmest[0]!.analysis.results;
  expect(result!.comparisons.map((comparison) => isFirm(result!, comparison))).toEqual([false, true]);
});

test('a growing or planned trial is no finding', () => {
  const page = frontPage([published('g', { status: 'growing' }, null), published('p', { status: 'planned' }, null)]);
  expect(page.newest).toEqual([]);
  expect([ids(page.growing), ids(page.planned)]).toEqual([['g'], ['p']]);
});
