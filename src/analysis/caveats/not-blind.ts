import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/** Whoever counted knew which sowing had which treatment, or it is not said. */
export const notBlind: Rule = ({ scoring: { blind } }, results) =>
  hasComparisons(results) && blind !== 'yes' ? [makeCaveat('not-blind', {}, { blind })] : [];
