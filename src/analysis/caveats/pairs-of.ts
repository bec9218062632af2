import type { Sowing, Trial } from '../../trial/trial.ts';
import type { Comparison, Result } from '../analysis.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { Pair, Side } from './pair.ts';

/** The comparisons within single lots, of all outcomes. */
export function pairsOf(trial: Trial, results: readonly Result[]): Pair[] {
  return results.flatMap((result) => knownPairs(trial, result).within);
}

/**
 * The comparisons whose layout can mislead: those within single lots and, where lots with one unit of each
 * are the blocks (methods 4), the comparison over these lots.
 */
export function layoutPairs(trial: Trial, results: readonly Result[]): Pair[] {
  return [...pairsOf(trial, results), ...results.flatMap((result) => knownPairs(trial, result).overLots)];
}

/** Whether a comparison is one over lots with a single unit of each treatment: the lots are its blocks. */
export function isOverSingles({ comparisons }: Result, { lot, lots, treatment }: Comparison): boolean {
  const within = comparisons.filter((other) => other.treatment === treatment && lots?.includes(other.lot));
  return lot === 'all' && within.length > 0 && within.every(hasOneUnit);
}

const hasOneUnit = ({ units }: Comparison): boolean => Math.min(units.treatment, units.control) <= 1;

interface Pairs {
  readonly trial: Trial;
  readonly within: readonly Pair[];
  readonly overLots: readonly Pair[];
}

/** Put together once for each result: many caveats look at the same pairs. */
const known = new WeakMap<Result, Pairs>();

function knownPairs(trial: Trial, result: Result): Pairs {
  const before = known.get(result);
  if (before?.trial === trial) return before;
  const { comparisons } = result;
  const within = comparisons
    .filter(({ lot }) => lot !== 'all')
    .map((comparison) => pairOf(trial, result, comparison, [comparison.lot]));
  const overLots = comparisons
    .filter((comparison) => isOverSingles(result, comparison))
    .map((comparison) => pairOf(trial, result, comparison, comparison.lots ?? []));
  const pairs = { trial, within, overLots };
  known.set(result, pairs);
  return pairs;
}

function pairOf(trial: Trial, result: Result, comparison: Comparison, lots: readonly string[]): Pair {
  const { lot, treatment, control, stored } = comparison;
  const reasons = new Map(result.leftOut.map(({ sowing, reason }) => [sowing, reason]));

  const isOf =
    (id: string) => (row: { readonly lot: string; readonly treatment: string; readonly stored: number | null }) =>
      row.treatment === id && row.stored === stored && lots.includes(row.lot);
  const side = (id: string): Side => {
    const sown: readonly Sowing[] =
      result.measure === 'moisture' ? [] : lots.flatMap((each) => lotDesign(trial, each).sowingsOf(id, stored));
    return {
      treatment: id,
      sowings: sown.filter((sowing) => !reasons.has(sowing.id)),
      leftOut: sown.flatMap((sowing) => {
        const reason = reasons.get(sowing.id);
        return reason === undefined ? [] : [{ sowing, reason }];
      }),
      values: result.values.filter(isOf(id)),
      group: lot === 'all' ? null : (result.groups.find(isOf(id)) ?? null),
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
