/** Result of a permutation test. `arrangements`: all that there are where exact, else those drawn. */
export interface Permutation {
  readonly arrangements: number;
  readonly exact: boolean;
  /** Two-sided, by absolute difference. */
  readonly p: number;
}

/** Up to this many arrangements are all looked at; beyond, `DRAWS` are drawn (methods.md 2). */
export const MOST_EXACT = 50_000;
export const DRAWS = 20_000;

/**
 * Two-sided p-value of an observed difference among the differences of rearranged units. Differences
 * within 1e-9 of the largest are equal. Where arrangements were drawn, the observed one counts as one more.
 *
 * @param observed    difference of the trial itself
 * @param differences of every arrangement (the trial's own included), or of those drawn
 * @returns null where even the most extreme arrangement has p above 0.05: then the test cannot show anything
 *
 * Source: Phipson & Smyth (2010), Stat. Appl. Genet. Mol. Biol. 9(1), article 39: (b + 1)/(m + 1).
 */
export function permutationP(observed: number, differences: Float64Array, exact: boolean): Permutation | null {
  const most = differences.reduce((largest, value) => Math.max(largest, Math.abs(value)), Math.abs(observed));
  const share = (limit: number) => {
    const reached = limit - 1e-9 * most;
    const count = differences.reduce((sum, value) => sum + (Math.abs(value) >= reached ? 1 : 0), 0);
    if (exact) return count / differences.length;
    return (count + (Math.abs(observed) >= reached ? 1 : 0)) / (differences.length + 1);
  };
  if (share(most) > 0.05) return null;
  return { arrangements: differences.length, exact, p: share(Math.abs(observed)) };
}
