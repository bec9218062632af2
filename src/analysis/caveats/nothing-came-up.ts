import { dayOf } from './checks-of.ts';
import { enteredOf } from './entered-of.ts';
import { isToldOf } from './is-told-of.ts';
import { hardlyAny } from './hardly-any.ts';
import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import { mergedCounts } from './merged-counts.ts';
import type { Rule } from './rule.ts';

/**
 * No seed of a group came up, so that it has no time and hardly a range. Silent where next to none came up on
 * the other side either, which is `hardly-any`.
 */
export const nothingCameUp: Rule = (trial, results) => {
  const told = hardlyAny(trial, results);
  return results.filter(isAboutCounts).flatMap((result) => {
    // A sowing with nothing up has no time and is left out of speed outcomes, so look at all that was sown.
    const sown = { ...result, leftOut: result.leftOut.filter(({ reason }) => reason !== 'nothing-germinated') };
    return result.groups.flatMap((group) => {
      const { lot, treatment } = group;
      const about = { outcome: result.outcome, lot, treatment };
      const isTold = told.some((caveat) => isToldOf(caveat, about));
      const sowings = enteredOf(trial, sown, group);
      const last = mergedCounts(trial, sowings, dayOf(result, lot)).at(-1);
      if (isTold || last === undefined || last.total > 0) return [];
      const seeds = sowings.every((sowing) => sowing.seeds !== null)
        ? sowings.reduce((sum, sowing) => sum + (sowing.seeds ?? 0), 0)
        : null;
      return [makeCaveat('nothing-came-up', about, { seeds, sowings: sowings.length })];
    });
  });
};
