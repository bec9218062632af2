import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * Care that touched some sowings only (an extra watering, a turn, a lid) and fell on one treatment: the
 * share of sowings touched differs by half or more. Told of single trays too.
 */
export const unequalHandling: Rule = (trial, results) =>
  layoutPairs(trial, results).flatMap(({ about, treated, control }) =>
    trial.events
      .filter(({ action }) => action === 'care')
      .flatMap(({ sowings, what, day, date }) => {
        const count = (ids: readonly { readonly id: string }[]) => ids.filter(({ id }) => sowings.includes(id)).length;
        const touched = { treatment: count(treated.sowings), control: count(control.sowings) };
        const of = { treatment: treated.sowings.length, control: control.sowings.length };
        const gap = Math.abs(touched.treatment / of.treatment - touched.control / of.control);
        if (!(gap >= 0.5)) return [];
        const names = { treatment: treated.treatment, control: control.treatment };
        return [makeCaveat('unequal-handling', about, { ...names, what, day, date, touched, of })];
      }),
  );
