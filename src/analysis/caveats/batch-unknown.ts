import type { Caveat } from '../analysis.ts';
import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * Nobody says which sowings were treated together: no batches are named and trial.yaml does not say how
 * the treatment was given, or says "in batches" without naming them. One caveat for all treatments concerned.
 */
export const batchUnknown: Rule = (trial, results): readonly Caveat[] => {
  const { treated } = trial.sowing;
  if (treated !== 'unknown' && treated !== 'in-batches') return [];

  const pairs = layoutPairs(trial, results).filter(({ single, result }) => !single && result.measure !== 'moisture');
  const unnamed = pairs.filter((pair) => pair.treated.sowings.every(({ batch }) => batch === null));
  const treatments = [...new Set(unnamed.map((pair) => pair.treated.treatment))].toSorted();
  if (unnamed.length === pairs.length) {
    return pairs.length === 0 ? [] : [makeCaveat('batch-unknown', {}, { treated, treatments })];
  }
  return unnamed.map(({ about }) =>
    makeCaveat('batch-unknown', about, { treated, treatments: [about.treatment ?? ''] }),
  );
};
