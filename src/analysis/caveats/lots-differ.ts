import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** The difference is not the same in all lots: what is pooled over them holds for none in particular (methods 4). */
export const lotsDiffer: Rule = (_, results) =>
  results.flatMap(({ outcome, unit, comparisons }) =>
    comparisons.flatMap(({ lot, lots, treatment, lotsDiffer }) => {
      if (lotsDiffer === null || lotsDiffer.p >= 0.05) return [];
      const estimates = comparisons.flatMap((each) =>
        each.treatment === treatment && lots?.includes(each.lot) && each.estimate !== null
          ? [{ lot: each.lot, estimate: each.estimate }]
          : [],
      );
      return [makeCaveat('lots-differ', { outcome, lot, treatment }, { p: lotsDiffer.p, estimates, unit })];
    }),
  );
