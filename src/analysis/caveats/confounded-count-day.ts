import type { Sowing } from '../../trial/trial.ts';
import { checksOf, dayOf } from './checks-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import type { Side } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { separation } from './separation.ts';

/**
 * The last check up to the outcome's day was on another day for each treatment, none shared; sowings that
 * were not checked on the outcome's day count as well, those of which every seed had come up do not. Told
 * of single trays too.
 */
export const confoundedCountDay: Rule = (trial, results) =>
  layoutPairs(trial, results.filter(isAboutCounts)).flatMap((pair) => {
    const lastDay = ({ id, lot, seeds }: Sowing): number[][] => {
      const last = checksOf(trial, id, dayOf(pair.result, lot)).at(-1);
      return last === undefined || last.germinated === seeds ? [] : [[last.day]];
    };
    const daysOf = ({ sowings, leftOut }: Side) => {
      const unchecked = leftOut.filter(({ reason }) => reason === 'not-checked').map(({ sowing }) => sowing);
      return [...sowings, ...unchecked].flatMap(lastDay);
    };
    const values = separation(daysOf(pair.treated), daysOf(pair.control));
    const names = { treatment: pair.treated.treatment, control: pair.control.treatment };
    return values === null ? [] : [makeCaveat('confounded-count-day', pair.about, { ...names, values })];
  });
