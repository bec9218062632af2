import { expect, test } from 'vitest';
import type { Comparison } from '../../src/analysis/analysis.ts';
import { facets } from '../../src/report/facets.ts';
import { listOrder } from '../../src/report/list-order.ts';
import type { Published } from '../../src/report/front-page.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeComparison } from '../support/make-comparison.ts';
import { makeAnalysis, makeResult } from '../support/make-result.ts';
import { makeLot, makeTrial } from '../support/make-trial.ts';

const words = wordsFor('en');

function entry(id: string, trial: Partial<Trial>, ...found: readonly Partial<Comparison>[]): Published {
  const comparisons = found.map((parts) => makeComparison({ estimate: 12, parts }));
  return {
    trial: makeTrial({ id, ...trial }),
    analysis: makeAnalysis({ trial: id, results: found.length === 0 ? [] : [makeResult({ comparisons })] }),
  };
}
const told = (published: readonly Published[], facet: string) =>
  facets(published, words)
    .find(({ id }) => id === facet)
    ?.values.map(({ address, name, trials }) => `${address} "${name}": ${trials.map(({ trial }) => trial.id)}`);

const a = entry(
  'a',
  { lots: [makeLot('l1', 'Leek'), makeLot('l2', 'sweet corn')], varies: 'soak', sown: '2025-03-01' },
  { verdict: 'matters' },
  { verdict: 'untestable' },
);
const b = entry('b', { lots: [makeLot('l3', 'leek')], varies: null, sown: '2026-03-01' }, { verdict: 'same' });
const c = entry('c', { lots: [makeLot('l4', 'leek')], varies: 'soak', sown: null, status: 'planned' });

test('names that share an address share a page, under the name written most', () => {
  expect(told([a, b, c], 'crop')).toEqual(['leek "leek": a,b,c', 'sweet-corn "sweet corn": a']);
});

test('a trial stands under each of its findings, and under none before it is compared', () => {
  expect(told([a, b, c], 'verdict')).toEqual([
    'matters "a difference that matters": a',
    'alike "alike enough": b',
    'cannot-tell "cannot tell": a',
  ]);
});

test('years go back from the newest; what is not sown or not stated is said', () => {
  expect(told([a, b, c], 'year')).toEqual(['not-sown "not sown yet": c', '2026 "2026": b', '2025 "2025": a']);
  expect(told([a, b, c], 'treatment')).toEqual(['not-stated "not stated": b', 'soak "soaking": a,c']);
  expect(told([a, b, c], 'status')).toEqual(['planned "planned": c', 'finished "finished": a,b']);
});

test('a list goes by date whatever was found, and holds every trial once', () => {
  const given = entry('given-up', { status: 'abandoned', sown: '2027-01-01' });
  const ids = (all: readonly Published[]) => listOrder(all).map(({ trial }) => trial.id);
  expect(ids([a, given, c, b])).toEqual(['b', 'a', 'c', 'given-up']);
  expect(ids([b, c, given, a])).toEqual(['b', 'a', 'c', 'given-up']);
});
