import type { Outcome, Trial } from '../trial/trial.ts';
import { testsOf } from './storage/tests-of.ts';

/**
 * The outcomes that are analysed: those of trial.yaml or, where none is listed, germination on the
 * last count day and every measured column on its last day, the first of them primary. A storage series is also
 * compared test by test: where no outcome of germination is listed, one is added with the day and margin of the series.
 */
export function outcomesOf(trial: Trial): readonly Outcome[] {
  if (trial.outcomes.length > 0) return withTests(trial.outcomes);
  const common = { day: null, matters: null, pool: false };
  const germination = { ...common, id: 'germination', measure: 'germination' as const, column: null };
  const traits = trial.traits.map(({ column }) => ({ ...common, id: column, measure: 'trait' as const, column }));
  const found = [...(trial.counts.length > 0 ? [germination] : []), ...traits];
  return found.map((outcome, index) => ({ ...outcome, primary: index === 0 }));
}

function withTests(outcomes: readonly Outcome[]): readonly Outcome[] {
  const storage = outcomes.find(({ measure }) => measure === 'storage');
  if (storage === undefined || outcomes.some(({ measure }) => measure === 'germination')) return outcomes;
  return [...outcomes, { ...storage, id: testsOf(storage.id), measure: 'germination', primary: false }];
}
