import { detectableMean } from '../statistics/detectable-mean.ts';
import { detectableProportion } from '../statistics/detectable-proportion.ts';
import type { Comparison, Result } from './analysis.ts';
import { hasUnknownSpread } from './has-unknown-spread.ts';

/** The smallest difference that a trial of so many units each shows 4 times in 5: points per 100 seeds, or the outcome's own unit. */
export interface DetectableByUnits {
  /** Rising units; what has no room for a difference is left out. */
  readonly steps: readonly { readonly units: number; readonly detectable: number }[];
  /** Units of each that settle `difference`; the last step. */
  readonly settles: { readonly units: number; readonly difference: number };
  /** True: nothing was known of the spread, so φ = 2 was taken. */
  readonly assumed: boolean;
}

/**
 * How the difference that can be shown falls with the number of units, up to the number that settles the
 * question (methods 7 and 11), at the trial's own spread or, where germination tells nothing of it, at φ = 2.
 *
 * @returns null where the comparison does not say what would settle it, or compares several lots together
 */
export function detectableByUnits(result: Result, comparison: Comparison): DetectableByUnits | null {
  const settles = comparison.wouldSettle ?? comparison.repeatWith;
  if (settles === null || comparison.lot === 'all') return null;
  const detectable = result.measure === 'germination' ? ofShares(result, comparison) : ofMeans(comparison);
  if (detectable === null) return null;
  // What is drawn must be what is said: so many units, and not one fewer.
  const isEnough = (number: number) => (detectable(number) ?? Infinity) <= settles.difference * (1 + 1e-9) + 1e-9;
  if (!isEnough(settles.units) || (settles.units > 2 && isEnough(settles.units - 1))) return null;

  const { treatment: units } = comparison.units;
  const wanted = [2, 4, 8, 16, 32, 64, 128, 256, 512].filter((number) => number < settles.units);
  const numbers = [...new Set([...wanted.slice(-5), ...(units >= 2 ? [units] : []), settles.units])]
    .filter((number) => number <= settles.units)
    .toSorted((a, b) => a - b);
  return {
    steps: numbers.flatMap((number) => {
      const found = detectable(number);
      return found === null ? [] : [{ units: number, detectable: found }];
    }),
    settles,
    assumed: result.measure === 'germination' && (comparison.dispersion === null || hasUnknownSpread(comparison)),
  };
}

/** The smallest difference that so many units of each would show; null where there is no room for one. */
type Detectable = (units: number) => number | null;

function ofShares(result: Result, comparison: Comparison): Detectable | null {
  const of = (id: string) =>
    result.groups.find(
      ({ lot, treatment, stored }) => lot === comparison.lot && treatment === id && stored === comparison.stored,
    );
  const [treated, control] = [of(comparison.treatment), of(comparison.control)];
  if (!treated?.seeds || !control?.seeds) return null;
  const { kind, treatment: units } = comparison.units;
  const inBlocks = kind === 'block';
  const seeds = (treated.seeds + control.seeds) / (inBlocks ? 2 * units : treated.units + control.units);
  const share = ((control.count ?? NaN) + 0.5) / (control.seeds + 1);
  const used = comparison.dispersion?.used ?? 2;
  return (number) => {
    const dfUsed = inBlocks ? number : 2 * number - 1;
    const found = detectableProportion({ share, control: number * seeds, treated: number * seeds, used, dfUsed });
    return found === null ? null : 100 * found;
  };
}

/** What a trial of means could show is in proportion to its spread, which so follows from what this one could. */
function ofMeans({ detectable, test, units: { kind, treatment, control } }: Comparison): Detectable | null {
  if (detectable === null || typeof test?.df !== 'number') return null;
  const inBlocks = kind === 'block';
  const times = inBlocks ? 2 : 1; // a mean of differences in b blocks is as sure as one of two groups of 2b
  const sized = (treated: number, untreated: number, df: number, sd: number) =>
    detectableMean({ sd, control: times * untreated, treated: times * treated, df });
  const sd = detectable / sized(treatment, control, test.df, 1);
  return (number) => sized(number, number, inBlocks ? number - 1 : 2 * number - 2, sd);
}
