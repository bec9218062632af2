import type { Counted } from '../statistics/counted.ts';
import { rangeTolerance } from '../statistics/range-tolerance.ts';

/** Percentages of the units of one group against the widest range that seed luck alone explains. */
export interface ReplicateAgreement {
  readonly lowest: number;
  readonly highest: number;
  readonly range: number;
  readonly limit: number;
  /** The public table for two or four replicates of 100 seeds, else the formula behind it. */
  readonly rule: 'table' | 'formula';
  readonly isBeyond: boolean;
}

/**
 * How well the units of one group agree (methods 12). Where seed numbers differ, the range is held against
 * what the smallest unit allows.
 *
 * @param units of one lot × treatment × storage time
 * @returns null with fewer than two units, or where all or none came up
 *
 * Source: 7 CFR 201.55 and Miles (1963), see src/statistics/range-tolerance.ts.
 */
export function replicateAgreement(units: readonly Counted[]): ReplicateAgreement | null {
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

const pooled = (units: readonly Counted[]): Counted => ({
  count: units.reduce((sum, { count }) => sum + count, 0),
  seeds: units.reduce((sum, { seeds }) => sum + seeds, 0),
});
