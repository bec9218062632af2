import type { Sowing } from '../../trial/trial.ts';
import { checksOf, dayOf } from './checks-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isSpeed } from './measures.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';

/**
 * Speed compared between sowings that were not checked on the same days: a seed counts from the check that
 * found it, so the days of checking are in every time. A missed check loses nothing where the checks before
 * and after it agree, or where every seed had come up; only missed checks that may have lost something count.
 */
export const checkedOnDifferentDays: Rule = (trial, results) =>
  pairsOf(trial, results.filter(isSpeed)).flatMap((pair) => {
    const { treated, control, about } = pair;
    const checks = ({ id, lot }: Sowing) => checksOf(trial, id, dayOf(pair.result, lot));
    const daysOf = (sowings: readonly Sowing[]) =>
      [...new Set(sowings.flatMap((sowing) => checks(sowing).map(({ day }) => day)))].toSorted((a, b) => a - b);
    const allDays = daysOf([...treated.sowings, ...control.sowings]);

    const missed = [treated, control].flatMap(({ treatment, sowings }) =>
      sowings.map((sowing) => ({
        sowing: sowing.id,
        treatment,
        days: allDays.filter((day) => isMissed(day, checks(sowing), sowing.seeds)),
      })),
    );
    const tellingly = missed.filter(({ days }) => days.length > 0);
    if (tellingly.length === 0) return [];
    const days = { treatment: daysOf(treated.sowings), control: daysOf(control.sowings) };
    const names = { treatment: treated.treatment, control: control.treatment };
    return [makeCaveat('checked-on-different-days', about, { ...names, days, missed: tellingly })];
  });

function isMissed(
  day: number,
  checks: readonly { readonly day: number; readonly germinated: number }[],
  seeds: number | null,
): boolean {
  if (checks.some((check) => check.day === day)) return false;
  const before = checks.findLast((check) => check.day < day)?.germinated ?? 0;
  const after = checks.find((check) => check.day > day)?.germinated;
  return before !== seeds && before !== after;
}
