import { cumulate, type Check } from './checks.ts';

/**
 * Synchrony of germination, Σ C(n,2)/C(N,2): the chance that two seeds came up at the same check, 0 to 1.
 *
 * @returns null where fewer than two germinated
 * @throws {RangeError} when days do not rise or a count is negative
 *
 * Source: Primack (1980); Ranal & Santana (2006), Braz. J. Bot. 29, 1–11, from memory. Checked against: R `choose`.
 */
export function germinationSynchrony(checks: readonly Check[]): number | null {
  const cumulative = cumulate('germinationSynchrony', checks);
  const total = cumulative.at(-1)?.total ?? 0;
  if (total < 2) return null;
  return cumulative.reduce((pairs, { newly }) => pairs + newly * (newly - 1), 0) / (total * (total - 1));
}
