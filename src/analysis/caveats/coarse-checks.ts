import type { Trial } from '../../trial/trial.ts';
import type { Group, Result } from '../analysis.ts';
import { dayOf } from './checks-of.ts';
import { enteredOf } from './entered-of.ts';
import type { Evidence } from './evidence.ts';
import { makeCaveat } from './make-caveat.ts';
import { isSpeed } from './measures.ts';
import { mergedCounts } from './merged-counts.ts';
import type { Rule } from './rule.ts';

/**
 * The gap between two checks that holds the half (any gap, for mean times, spreads and rates) holds more than
 * 0.6 of what came up in a group, so that the times rest on the days of checking (methods 5).
 */
export const coarseChecks: Rule = (trial, results) =>
  results.filter(isSpeed).flatMap((result) =>
    result.groups.flatMap((group) => {
      const gap = widestGap(trial, result, group);
      const about = { outcome: result.outcome, lot: group.lot, treatment: group.treatment };
      return gap !== null && gap.percent > 60 ? [makeCaveat('coarse-checks', about, gap)] : [];
    }),
  );

function widestGap(trial: Trial, result: Result, group: Group): Evidence['coarse-checks'] | null {
  const checks = [
    { day: 0, total: 0 },
    ...mergedCounts(trial, enteredOf(trial, result, group), dayOf(result, group.lot)),
  ];
  const final = checks.at(-1)?.total ?? 0;
  if (final === 0) return null;

  const gaps = checks.slice(1).map((check, index) => {
    const before = checks[index] ?? check;
    const holdsHalf = before.total < final / 2 && check.total >= final / 2;
    return { from: before.day, to: check.day, percent: (100 * (check.total - before.total)) / final, holdsHalf };
  });
  const telling = result.measure === 't50' ? gaps.filter(({ holdsHalf }) => holdsHalf) : gaps;
  const [widest] = telling.toSorted((a, b) => b.percent - a.percent);
  return widest === undefined ? null : { from: widest.from, to: widest.to, percent: widest.percent };
}
