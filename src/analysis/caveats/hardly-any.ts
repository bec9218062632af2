import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts } from './measures.ts';
import type { Side } from './pair.ts';
import { pairsOf } from './pairs-of.ts';
import type { Rule } from './rule.ts';
import { totalIn } from './total-in.ts';

/** Fewer than five seeds came up in both treatments together (methods 7). */
export const hardlyAny: Rule = (trial, results) =>
  pairsOf(trial, results.filter(isAboutCounts)).flatMap(({ about, treated, control }) => {
    const sidesOf = (what: 'seeds' | 'germinated') => ({
      treatment: totalOf(treated, what),
      control: totalOf(control, what),
    });
    const germinated = sidesOf('germinated');
    if (!wasCounted(treated) || !wasCounted(control) || germinated.treatment + germinated.control >= 5) return [];
    const names = { treatment: treated.treatment, control: control.treatment };
    return [makeCaveat('hardly-any', about, { ...names, germinated, seeds: sidesOf('seeds') })];
  });

/** Seeds sown, or seeds that came up, also in the sowings without a time because nothing came up in them. */
function totalOf({ values, leftOut }: Side, what: 'seeds' | 'germinated'): number {
  const withoutTime = leftOut.filter(({ reason }) => reason === 'nothing-germinated');
  const sown = what === 'seeds' ? withoutTime.reduce((sum, { sowing }) => sum + (sowing.seeds ?? 0), 0) : 0;
  return totalIn(values, what) + sown;
}

/** A sowing in which nothing came up has no time and is left out of speed outcomes, but it was counted. */
const wasCounted = ({ values, leftOut }: Side): boolean =>
  values.length > 0 || leftOut.some(({ reason }) => reason === 'nothing-germinated');
