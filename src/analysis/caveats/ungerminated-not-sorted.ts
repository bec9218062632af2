import { checksOf, dayOf } from './checks-of.ts';
import { enteredOf } from './entered-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';

/** Seeds that did not come up were not sorted into hard, fresh and dead, so dormant ones look like dead ones. */
export const ungerminatedNotSorted: Rule = (trial, results) =>
  results.filter(isGermination).flatMap((result) =>
    trial.lots.flatMap(({ id: lot }) => {
      const groups = result.groups.filter((group) => group.lot === lot);
      const entered = new Set(groups.flatMap((group) => enteredOf(trial, result, group)));
      const checks = [...entered].map(({ id }) => checksOf(trial, id, dayOf(result, lot)));
      const isSorted = checks.flat().some(({ hard, fresh, dead }) => hard !== null || fresh !== null || dead !== null);
      const seeds = [...entered].reduce((sum, sowing) => sum + (sowing.seeds ?? 0), 0);
      const ungerminated = seeds - checks.reduce((sum, each) => sum + (each.at(-1)?.germinated ?? 0), 0);
      if (isSorted || ungerminated <= 0) return [];
      return [makeCaveat('ungerminated-not-sorted', { outcome: result.outcome, lot }, { ungerminated, seeds })];
    }),
  );
