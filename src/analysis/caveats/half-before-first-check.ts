import { checksOf, dayOf } from './checks-of.ts';
import { enteredOf } from './entered-of.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/**
 * Half of what came up in a sowing (a quarter, for spread) was up at the first check already: when, nobody saw,
 * so the sowing has no such time (methods 5). One caveat a group.
 */
export const halfBeforeFirstCheck: Rule = (trial, results) =>
  results
    .filter(({ measure }) => measure === 't50' || measure === 'spread')
    .flatMap((result) =>
      result.groups.flatMap((group) => {
        const portion = result.measure === 't50' ? 0.5 : 0.25;
        const early = enteredOf(trial, result, group).flatMap(({ id }) => {
          const checks = checksOf(trial, id, dayOf(result, group.lot));
          const [first, last] = [checks[0], checks.at(-1)];
          const isEarly = first && last && last.germinated > 0 && first.germinated >= portion * last.germinated;
          return isEarly ? [{ id, day: first.day }] : [];
        });
        const [first] = early;
        const about = { outcome: result.outcome, lot: group.lot, treatment: group.treatment };
        if (first === undefined) return [];
        const day = Math.max(...early.map((sowing) => sowing.day));
        return [makeCaveat('half-before-first-check', about, { day, portion, units: early.map(({ id }) => id) })];
      }),
    );
