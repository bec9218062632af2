import { cumulate, type Check } from './checks.ts';

/**
 * Uncertainty of germination, −Σ f log₂ f in bits: 0 when all came up at one check, more the more they were
 * spread over checks. Depends on how many checks there were.
 *
 * @returns null where nothing germinated
 * @throws {RangeError} when days do not rise or a count is negative
 *
 * Source: Labouriau & Valadares (1976); Ranal & Santana (2006), Braz. J. Bot. 29, 1–11, from memory.
 * Checked against: R arithmetic.
 */
export function germinationUncertainty(checks: readonly Check[]): number | null {
  const cumulative = cumulate('germinationUncertainty', checks);
  const total = cumulative.at(-1)?.total ?? 0;
  if (total === 0) return null;
  return cumulative
    .filter(({ newly }) => newly > 0)
    .reduce((bits, { newly }) => bits + (newly / total) * Math.log2(total / newly), 0);
}
