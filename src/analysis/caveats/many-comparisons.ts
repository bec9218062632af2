import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** A difference was found among several comparisons of one outcome, and does not hold once that is allowed for. */
export const manyComparisons: Rule = (_, results) =>
  results.flatMap(({ outcome, comparisons }) => {
    const tested = comparisons.filter(({ test }) => test !== null && test.pAdjusted !== null);
    return comparisons.flatMap(({ lot, treatment, verdict, test }) => {
      const isFound = verdict === 'different' || verdict === 'matters';
      if (!isFound || test === null || test.pAdjusted === null || test.pAdjusted <= 0.05) return [];
      const { p, pAdjusted } = test;
      const family = tested.filter((each) => (each.lot === 'all') === (lot === 'all')).length; // adjusted apart
      return [makeCaveat('many-comparisons', { outcome, lot, treatment }, { comparisons: family, p, pAdjusted })];
    });
  });
