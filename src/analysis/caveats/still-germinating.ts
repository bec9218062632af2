import type { Trial } from '../../trial/trial.ts';
import type { Group, Result } from '../analysis.ts';
import type { Evidence } from './evidence.ts';
import { enteredOf } from './entered-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import { mergedCounts } from './merged-counts.ts';
import type { Rule } from './rule.ts';

/**
 * The last check added 5 % of the seeds or more, so more may have come up afterwards. Looks at the trial's last
 * check, which may be later than the outcome's day; with a single check nothing can be told. Silent where all
 * came up, for then nothing is left to come.
 */
export const stillGerminating: Rule = (trial, results) =>
  results.filter(isAboutCounts).flatMap((result) =>
    result.groups.flatMap((group) => {
      const evidence = lastStep(trial, result, group);
      const about = { outcome: result.outcome, lot: group.lot, treatment: group.treatment };
      return evidence !== null && evidence.percent >= 5 ? [makeCaveat('still-germinating', about, evidence)] : [];
    }),
  );

function lastStep(trial: Trial, result: Result, group: Group): Evidence['still-germinating'] | null {
  const sowings = enteredOf(trial, result, group);
  const seeds = sowings.reduce((sum, sowing) => sum + (sowing.seeds ?? 0), 0);
  const checks = mergedCounts(trial, sowings);
  const [before, last] = checks.slice(-2);
  if (before === undefined || last === undefined || last.total >= seeds) return null;
  const added = last.total - before.total;
  return { added, seeds, percent: (100 * added) / seeds, from: before.day, to: last.day };
}
