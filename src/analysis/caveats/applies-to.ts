import type { Caveat, CaveatId, Comparison, Result } from '../analysis.ts';
import { isOverSingles } from './pairs-of.ts';

/**
 * Whether a caveat limits a comparison: it is about its outcome (or all), its lot (or all) and one of its two
 * treatments (or all). What is said of one lot also limits a comparison pooled over that lot, with two
 * exceptions: a finding among many comparisons stands for itself; and where lots with one unit each are the blocks,
 * their layout is judged over all of them together (a caveat with lot "all").
 */
export function appliesTo(caveat: Caveat, result: Result, comparison: Comparison): boolean {
  const isOutcome = caveat.outcome === null || caveat.outcome === result.outcome;
  const isTreatment =
    caveat.treatment === null || caveat.treatment === comparison.treatment || caveat.treatment === comparison.control;
  return isOutcome && isTreatment && isLot(caveat, result, comparison);
}

function isLot({ id, lot }: Caveat, result: Result, comparison: Comparison): boolean {
  if (lot === null || lot === comparison.lot) return true;
  if (comparison.lot !== 'all' || !comparison.lots?.includes(lot) || id === 'many-comparisons') return false;
  return !(OF_UNITS.includes(id) && isOverSingles(result, comparison));
}

/** Caveats about single units and where and when they stood, which pairs of lots may even out. */
const OF_UNITS: readonly CaveatId[] = [
  'one-sowing',
  'one-batch',
  'confounded-place',
  'confounded-block',
  'confounded-position',
  'confounded-scorer',
  'confounded-sowing-day',
  'confounded-count-day',
  'unequal-soak',
  'unequal-handling',
  'positions-unbalanced',
  'few-units',
];
