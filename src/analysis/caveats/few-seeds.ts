import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';

/** Fewer than 50 seeds in a group. */
export const fewSeeds: Rule = (_, results) =>
  results
    .filter((result) => isGermination(result) || result.measure === 'storage')
    .flatMap(({ outcome, groups }) =>
      groups.flatMap(({ lot, treatment, seeds }) =>
        seeds !== null && seeds > 0 && seeds < 50
          ? [makeCaveat('few-seeds', { outcome, lot, treatment }, { seeds })]
          : [],
      ),
    );
