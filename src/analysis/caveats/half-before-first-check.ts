import type { Trial } from '../../trial/trial.ts';
import type { Result, UnitValue } from '../analysis.ts';
import { lotDesign } from '../units/lot-design.ts';
import { dayOf } from './checks-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { mergedCounts } from './merged-counts.ts';
import type { Rule } from './rule.ts';
import { unitGroups } from './unit-groups.ts';

/**
 * Half of what came up in a unit (a quarter, for spread) was up at the first check already: when, nobody saw,
 * so the unit has no such time (methods 5). One caveat a group.
 */
export const halfBeforeFirstCheck: Rule = (trial, results) =>
  results
    .filter(({ measure }) => measure === 't50' || measure === 'spread')
    .flatMap((result) =>
      trial.lots.flatMap(({ id: lot }) =>
        unitGroups(result, lot).flatMap(({ treatment, values }) => {
          const portion = result.measure === 't50' ? 0.5 : 0.25;
          const early = values.flatMap((value) => {
            const day = firstCheckWith(portion, trial, result, value);
            return day === null ? [] : [{ unit: value.unit, day }];
          });
          if (early.length === 0) return [];
          const about = { outcome: result.outcome, lot, treatment };
          const day = Math.max(...early.map((each) => each.day));
          return [makeCaveat('half-before-first-check', about, { day, portion, units: early.map(({ unit }) => unit) })];
        }),
      ),
    );

/** Day of the unit's first check, if the portion of what came up in the end was up by then. */
function firstCheckWith(portion: number, trial: Trial, result: Result, value: UnitValue): number | null {
  const { lot, treatment, stored, sowings } = value;
  const members = lotDesign(trial, lot)
    .sowingsOf(treatment, stored)
    .filter(({ id }) => sowings.includes(id));
  const checks = mergedCounts(trial, members, dayOf(result, lot)).filter(({ day }) => day > 0);
  const [first, last] = [checks[0], checks.at(-1)];
  const isEarly = first && last && last.total > 0 && first.total >= portion * last.total;
  return isEarly ? first.day : null;
}
