import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Side } from './pair.ts';
import { layoutPairs } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * The treatments were soaked for different times although soaking is not the question. Times within a tenth
 * of each other are alike (common practice, no source); a side with no time recorded is taken as different
 * from one that was soaked. Told of single trays too.
 */
export const unequalSoak: Rule = (trial, results) =>
  trial.varies === 'soak'
    ? []
    : layoutPairs(trial, results).flatMap(({ about, treated, control }) => {
        const hours = { treatment: hoursOf(treated), control: hoursOf(control) };
        const names = { treatment: treated.treatment, control: control.treatment };
        return areAlike(hours.treatment, hours.control) ? [] : [makeCaveat('unequal-soak', about, { ...names, hours })];
      });

type Hours = Evidence['unequal-soak']['hours']['treatment'];

function hoursOf({ sowings }: Side): Hours {
  const hours = sowings.map(({ soakHours }) => soakHours).filter((soak) => soak !== null);
  return hours.length === 0 ? null : { shortest: Math.min(...hours), longest: Math.max(...hours) };
}

function areAlike(one: Hours, other: Hours): boolean {
  if (one === null || other === null) return (one?.longest ?? 0) === 0 && (other?.longest ?? 0) === 0;
  const isClose = (a: number, b: number) => Math.abs(a - b) <= 0.1 * Math.max(a, b);
  return isClose(one.shortest, other.shortest) && isClose(one.longest, other.longest);
}
