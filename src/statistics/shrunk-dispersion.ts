/**
 * The dispersion φ* that intervals and tests use, and its degrees of freedom ν. One extra degree of
 * freedom holds φ = 2, an assumption, so that two trays that agree by luck do not look sure; never below 1.
 * With no information at all (df 0) it is 2 on 2.
 *
 * @param statistic Pearson's X²
 * @param df        its degrees of freedom
 * @throws {RangeError} when either is negative
 *
 * Source: methods.md 2: φ* = max(1, (X² + 2)/(df + 1)), ν = max(2, df + 1); shrinkage of the kind in
 * Smyth (2004), Stat. Appl. Genet. Mol. Biol. 3(1), article 3. The prior is this project's own; its error
 * rates are simulated in tests/bench.
 */
export function shrunkDispersion(statistic: number, df: number): { used: number; dfUsed: number } {
  if (!(statistic >= 0 && statistic < Infinity && df >= 0 && df < Infinity)) {
    throw new RangeError(`shrunkDispersion needs a statistic and df of 0 or more, got ${statistic} on ${df}`);
  }
  return { used: Math.max(1, (statistic + 2) / (df + 1)), dfUsed: Math.max(2, df + 1) };
}
