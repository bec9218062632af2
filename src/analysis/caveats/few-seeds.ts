import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';

/** Fewer than 50 seeds in a group; of several storage times the one with the fewest. */
export const fewSeeds: Rule = (_, results) =>
  results
    .filter((result) => isGermination(result) || result.measure === 'storage')
    .flatMap(({ outcome, groups }) =>
      [...Map.groupBy(groups, ({ lot, treatment }) => JSON.stringify([lot, treatment])).values()].flatMap((alike) => {
        const known = alike.flatMap((group) => (group.seeds === null || group.seeds === 0 ? [] : [group.seeds]));
        const [seeds, group] = [Math.min(...known), alike[0]];
        if (group === undefined || seeds >= 50) return [];
        return [makeCaveat('few-seeds', { outcome, lot: group.lot, treatment: group.treatment }, { seeds })];
      }),
    );
