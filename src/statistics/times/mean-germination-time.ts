import { cumulate, type Check } from './checks.ts';

/**
 * Mean day of germination, each seed counted on the day of the check that found it: Σ n t / N.
 *
 * @returns null where nothing germinated
 * @throws {RangeError} when days do not rise or a count is negative
 *
 * Source: Ellis & Roberts (1981); Labouriau (1983), from memory. Checked against: R `weighted.mean`.
 */
export function meanGerminationTime(checks: readonly Check[]): number | null {
  const cumulative = cumulate('meanGerminationTime', checks);
  const total = cumulative.at(-1)?.total ?? 0;
  return total === 0 ? null : cumulative.reduce((sum, { day, newly }) => sum + newly * day, 0) / total;
}
