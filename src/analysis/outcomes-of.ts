import type { Outcome, Trial } from '../trial/trial.ts';

/**
 * The outcomes that are analysed: those of trial.yaml or, where none is listed, germination on the
 * last count day and every measured column on its last day, the first of them primary.
 */
export function outcomesOf(trial: Trial): readonly Outcome[] {
  if (trial.outcomes.length > 0) return trial.outcomes;
  const common = { day: null, matters: null, pool: false };
  const germination = { ...common, id: 'germination', measure: 'germination' as const, column: null };
  const traits = trial.traits.map(({ column }) => ({ ...common, id: column, measure: 'trait' as const, column }));
  const found = [...(trial.counts.length > 0 ? [germination] : []), ...traits];
  return found.map((outcome, index) => ({ ...outcome, primary: index === 0 }));
}
