import type { Sowing, Trial } from '../../trial/trial.ts';
import type { Result } from '../analysis.ts';
import { wantedDay } from '../units/wanted-day.ts';
import { checksOf, dayOf } from './checks-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import type { Side } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { separation } from './separation.ts';

/**
 * The last check was on another day for each treatment, none shared. Checks after the day that the outcome names
 * do not matter; where it names none, all do, since the last day shared by all is compared. Sowings that were not
 * checked on the outcome's day count as well, those of which every seed had come up do not. Told of single
 * trays too.
 */
export const confoundedCountDay: Rule = (trial, results) =>
  layoutPairs(trial, results.filter(isAboutCounts)).flatMap(({ result, about, treated, control }) => {
    const lastDay = ({ id, lot, seeds }: Sowing): number[][] => {
      const last = checksOf(trial, id, namedDay(trial, result, lot)).at(-1);
      return last === undefined || last.germinated === seeds ? [] : [[last.day]];
    };
    const daysOf = ({ sowings, leftOut }: Side) => {
      const unchecked = leftOut.filter(({ reason }) => reason === 'not-checked').map(({ sowing }) => sowing);
      return [...sowings, ...unchecked].flatMap(lastDay);
    };
    const values = separation(daysOf(treated), daysOf(control));
    const names = { treatment: treated.treatment, control: control.treatment };
    return values === null ? [] : [makeCaveat('confounded-count-day', about, { ...names, values })];
  });

/** The day read for the lot, if the outcome names one; else no limit. */
function namedDay(trial: Trial, result: Result, lot: string): number {
  const outcome = trial.outcomes.find(({ id }) => id === result.outcome);
  return outcome === undefined || wantedDay(outcome, lot) === null ? Infinity : dayOf(result, lot);
}
