import type { Caveat } from '../analysis.ts';
import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * Nobody says which sowings were treated together: no batches are named and trial.yaml does not say how
 * the treatment was given, or says "in batches" without naming them. One caveat where it holds of the whole trial.
 */
export const batchUnknown: Rule = (trial, results): readonly Caveat[] => {
  const { treated } = trial.sowing;
  if (treated !== 'unknown' && treated !== 'in-batches') return [];

  const sown = results.filter(({ measure }) => measure !== 'moisture');
  const pairs = layoutPairs(trial, sown).filter(({ single }) => !single);
  const unnamed = pairs.filter((pair) => pair.treated.sowings.every(({ batch }) => batch === null));
  if (unnamed.length === 0) return [];
  if (unnamed.length < pairs.length || sown.length < results.length) {
    return unnamed.map(({ about, treated: side }) =>
      makeCaveat('batch-unknown', about, { treated, treatments: [side.treatment] }),
    );
  }
  const treatments = [...new Set(unnamed.map((pair) => pair.treated.treatment))].toSorted();
  return [makeCaveat('batch-unknown', {}, { treated, treatments })];
};
