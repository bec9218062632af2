import type { Counted } from '../statistics/counted.ts';
import { chiSquareCdf } from '../statistics/distributions/chi-square.ts';
import { pearsonDispersion } from '../statistics/pearson-dispersion.ts';
import { rangeTolerance } from '../statistics/range-tolerance.ts';

/** Percentages of the units of one group against the widest range that seed luck alone explains. */
export interface RangeAgreement {
  readonly lowest: number;
  readonly highest: number;
  readonly range: number;
  readonly limit: number;
  /** The public table for two or four replicates of 100 seeds, else the formula behind it. */
  readonly rule: 'table' | 'formula';
  readonly isBeyond: boolean;
}

export interface ReplicateAgreement {
  /** One entry a group; null with fewer than two units, or where all or none came up. */
  readonly ranges: readonly (RangeAgreement | null)[];
  /** Units more alike than chance allows: P(X² as small or smaller); null where that cannot be told. */
  readonly alike: { readonly phi: number; readonly df: number; readonly p: number } | null;
}

/**
 * How well the units of each group agree (methods 12). Where seed numbers differ, the range is held against
 * what the smallest unit allows. `alike` is the left tail of X² over the groups in which at least 5 seeds of
 * every unit are expected to come up and 5 not to, with 4 degrees of freedom or more.
 *
 * @param groups units of each group (lot × treatment × storage time)
 *
 * Source: 7 CFR 201.55 and Miles (1963) for ranges (src/statistics/range-tolerance.ts); Pearson's X², whose
 * chi-square limit wants expected counts of 5 (Cochran 1954, Biometrics 10, 417–451, from memory).
 */
export function replicateAgreement(groups: readonly (readonly Counted[])[]): ReplicateAgreement {
  const { statistic, df, phi } = pearsonDispersion(groups.filter(hasEnoughOfBoth));
  return {
    ranges: groups.map(rangeOf),
    alike: phi !== null && df >= 4 ? { phi, df, p: chiSquareCdf(statistic, df) } : null,
  };
}

function rangeOf(units: readonly Counted[]): RangeAgreement | null {
  if (units.length < 2) return null;
  const { count, seeds } = pooled(units);
  const share = count / seeds;
  const smallest = Math.min(...units.map(({ seeds }) => seeds));
  const tolerance = rangeTolerance(share, units.length, smallest);
  if (tolerance === null) return null;

  const percentages = units.map(({ count, seeds }) => (100 * count) / seeds);
  const [lowest, highest] = [Math.min(...percentages), Math.max(...percentages)];
  const rule = smallest === 100 && isInTable(units.length, Math.round(100 * share)) ? 'table' : 'formula';
  const limit = rule === 'table' ? Math.round(100 * tolerance) : 100 * tolerance;
  return {
    lowest,
    highest,
    range: highest - lowest,
    limit,
    rule,
    isBeyond: highest - lowest > limit + 1e-9,
  };
}

/** Rows printed in 7 CFR 201.55: means of 2 to 99 % for four replicates, 4 to 97 % for two. */
const isInTable = (replicates: number, percent: number): boolean =>
  (replicates === 4 && percent >= 2 && percent <= 99) || (replicates === 2 && percent >= 4 && percent <= 97);

function hasEnoughOfBoth(units: readonly Counted[]): boolean {
  const { count, seeds } = pooled(units);
  return units.every((unit) => (unit.seeds * Math.min(count, seeds - count)) / seeds >= 5);
}

const pooled = (units: readonly Counted[]): Counted => ({
  count: units.reduce((sum, { count }) => sum + count, 0),
  seeds: units.reduce((sum, { seeds }) => sum + seeds, 0),
});
