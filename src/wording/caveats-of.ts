import type { Analysis, Caveat, Comparison, Result } from '../analysis/analysis.ts';

/** The caveats that touch a comparison: of the whole trial, of its outcome, its lot, either of its treatments. */
export function caveatsOf(analysis: Analysis, result: Result, comparison: Comparison): readonly Caveat[] {
  const lots = comparison.lots ?? [comparison.lot];
  return analysis.caveats.filter(
    ({ outcome, lot, treatment }) =>
      (outcome === null || outcome === result.outcome) &&
      (lot === null || lot === comparison.lot || lots.includes(lot)) &&
      (treatment === null || treatment === comparison.treatment || treatment === comparison.control),
  );
}
