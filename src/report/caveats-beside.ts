import { appliesTo } from '../analysis/caveats/applies-to.ts';
import type { Analysis, Caveat, Result } from '../analysis/analysis.ts';
import { lotsOf } from '../analysis/lots-of.ts';

/**
 * The caveats that stand beside the results of one lot (or of `"all"` lots together) in one outcome. What is said
 * of a lot stands beside each outcome that it concerns, and beside the lots together where it limits them too. A
 * caveat that names no lot stands beside the first lot; one of a lot that was not compared, beside the first lot of
 * its outcome, or of the primary one where it names none. Those of the whole trial: `caveatsOfTrial`.
 */
export function caveatsBeside(analysis: Analysis, result: Result, lot: string): readonly Caveat[] {
  const lots = lotsOf(result);
  const pooled = result.comparisons.filter((comparison) => comparison.lot === 'all');
  return analysis.caveats.filter((caveat) => {
    if (isOfTrial(caveat) || caveat.id === 'no-half-life') return false; // the finding itself says that
    if (caveat.outcome !== null && caveat.outcome !== result.outcome) return false;
    if (caveat.lot === null) return lots[0] === lot && (caveat.outcome !== null || concerns(caveat, result));
    if (!lots.includes(caveat.lot)) return lots[0] === lot && (caveat.outcome !== null || result.primary);
    if (lot === 'all' && caveat.lot !== 'all')
      return pooled.some((comparison) => appliesTo(caveat, result, comparison));
    return caveat.lot === lot && (caveat.outcome !== null || concerns(caveat, result));
  });
}

/** A caveat of one treatment says nothing of an outcome in which that treatment was not compared. */
const concerns = ({ treatment }: Caveat, { primary, groups }: Result): boolean =>
  primary || treatment === null || groups.some((group) => group.treatment === treatment);

/** Caveats of the whole trial that do not cap what may be claimed by themselves stand beside "how far to trust it". */
export function caveatsOfTrial(analysis: Analysis): readonly Caveat[] {
  return analysis.caveats.filter((caveat) => isOfTrial(caveat) && caveat.weight !== 'serious');
}

const isOfTrial = ({ outcome, lot, treatment }: Caveat) => outcome === null && lot === null && treatment === null;
