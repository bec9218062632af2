import type { Analysis, Caveat, Result } from '../analysis/analysis.ts';
import { lotsOf } from '../analysis/lots-of.ts';

/**
 * The caveats that stand beside the results of one lot (or of `"all"` lots together) in one outcome.
 * A caveat of the outcome that names no lot stands beside its first lot; one that names a lot but no
 * outcome stands beside the primary outcome. Those of the whole trial: `caveatsOfTrial`.
 */
export function caveatsBeside(analysis: Analysis, result: Result, lot: string): readonly Caveat[] {
  const isFirstLot = lotsOf(result)[0] === lot;
  return analysis.caveats.filter((caveat) => {
    if (isOfTrial(caveat) || caveat.id === 'no-half-life') return false; // the finding itself says that
    const isOutcome = caveat.outcome === null ? result.primary : caveat.outcome === result.outcome;
    const isLot = caveat.lot === null || !lotsOf(result).includes(caveat.lot) ? isFirstLot : caveat.lot === lot;
    return isOutcome && isLot;
  });
}

/** Caveats of the whole trial that do not cap what may be claimed by themselves stand beside "how far to trust it". */
export function caveatsOfTrial(analysis: Analysis): readonly Caveat[] {
  return analysis.caveats.filter((caveat) => isOfTrial(caveat) && caveat.weight !== 'serious');
}

const isOfTrial = ({ outcome, lot, treatment }: Caveat) => outcome === null && lot === null && treatment === null;
