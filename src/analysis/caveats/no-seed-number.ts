import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';

/** Neither the seeds sown nor their mass is known, so that nothing can be said of the share that came up. */
export const noSeedNumber: Rule = (trial, results) =>
  results
    .filter((result) => isGermination(result) || result.measure === 'maguire' || result.measure === 'storage')
    .flatMap((result) =>
      trial.lots.flatMap(({ id: lot }) => {
        const isShown = result.groups.some((group) => group.lot === lot);
        const unknown = trial.sowings.filter((sowing) => isShown && sowing.lot === lot && sowing.seeds === null);
        const sowings = unknown.map(({ id }) => id).toSorted();
        return sowings.length === 0
          ? []
          : [makeCaveat('no-seed-number', { outcome: result.outcome, lot }, { sowings })];
      }),
    );
