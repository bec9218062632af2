import { enteredOf } from './entered-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';

/** Seeds were weighed rather than counted, so how many were sown is an estimate. */
export const seedsByMass: Rule = (trial, results) =>
  results
    .filter((result) => isGermination(result) || result.measure === 'maguire' || result.measure === 'storage')
    .flatMap((result) =>
      trial.lots.flatMap(({ id: lot, seedsPerGram }) => {
        const entered = result.groups
          .filter((group) => group.lot === lot)
          .flatMap((group) => enteredOf(trial, result, group));
        const sowings = [...new Set(entered.filter((sowing) => sowing.seedsByMass).map(({ id }) => id))].toSorted();
        const about = { outcome: result.outcome, lot };
        return sowings.length === 0 ? [] : [makeCaveat('seeds-by-mass', about, { sowings, seedsPerGram })];
      }),
    );
