import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** Everything was tried on one lot of one crop: other seed may answer otherwise. */
export const oneLot: Rule = (trial, results) => {
  const lots = new Set(results.flatMap(({ comparisons }) => comparisons.map(({ lot }) => lot)));
  const [lot] = trial.lots.filter(({ id }) => lots.has(id));
  return lots.size === 1 && lot !== undefined ? [makeCaveat('one-lot', {}, { lot: lot.id, crop: lot.crop })] : [];
};
