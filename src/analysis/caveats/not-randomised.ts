import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/** Which sowing got which treatment was not drawn at random, or it is not said how. */
export const notRandomised: Rule = ({ sowing: { assignment } }, results) =>
  hasComparisons(results) && assignment !== 'random' && assignment !== 'random-in-blocks'
    ? [makeCaveat('not-randomised', {}, { assignment })]
    : [];
