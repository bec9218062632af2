import type { Sowing, Trial } from '../../trial/trial.ts';
import type { Comparison, Result } from '../analysis.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { Pair, Side } from './pair.ts';

/** The comparisons within single lots, of all outcomes. */
export function pairsOf(trial: Trial, results: readonly Result[]): Pair[] {
  return results.flatMap((result) =>
    result.comparisons
      .filter(({ lot }) => lot !== 'all')
      .map((comparison) => pairOf(trial, result, comparison, [comparison.lot])),
  );
}

/**
 * The comparisons whose layout can mislead: those within single lots and, where lots with one unit of each
 * are the blocks (methods 4), the comparison over these lots.
 */
export function layoutPairs(trial: Trial, results: readonly Result[]): Pair[] {
  const pairs = pairsOf(trial, results);
  const overLots = results.flatMap((result) =>
    result.comparisons
      .filter((comparison) => isOverSingles(result, comparison))
      .map((comparison) => pairOf(trial, result, comparison, comparison.lots ?? [])),
  );
  return [...pairs, ...overLots];
}

/** Whether a comparison is one over lots with a single unit of each treatment: the lots are its blocks. */
export function isOverSingles({ comparisons }: Result, { lot, lots, treatment }: Comparison): boolean {
  const within = comparisons.filter((other) => other.treatment === treatment && lots?.includes(other.lot));
  return lot === 'all' && within.length > 0 && within.every(hasOneUnit);
}

const hasOneUnit = ({ units }: Comparison): boolean => Math.min(units.treatment, units.control) <= 1;

function pairOf(trial: Trial, result: Result, comparison: Comparison, lots: readonly string[]): Pair {
  const { lot, treatment, control, stored } = comparison;
  const unchecked = new Set(
    result.leftOut.filter(({ reason }) => reason === 'not-checked').map(({ sowing }) => sowing),
  );
  const out = new Set(result.leftOut.map(({ sowing }) => sowing));

  const side = (id: string): Side => {
    const sown: readonly Sowing[] =
      result.measure === 'moisture' ? [] : lots.flatMap((each) => lotDesign(trial, each).sowingsOf(id, stored));
    return {
      treatment: id,
      sowings: sown.filter((sowing) => !out.has(sowing.id)),
      unchecked: sown.filter((sowing) => unchecked.has(sowing.id)),
      values: result.values.filter(
        (value) => value.treatment === id && value.stored === stored && lots.includes(value.lot),
      ),
    };
  };
  return {
    result,
    comparison,
    treated: side(treatment),
    control: side(control),
    single: hasOneUnit(comparison),
    about: { outcome: result.outcome, lot, treatment },
  };
}
