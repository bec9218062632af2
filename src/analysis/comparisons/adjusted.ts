import { holm } from '../../statistics/holm.ts';
import type { Comparison } from '../analysis.ts';

/**
 * p-values adjusted for the number of comparisons of the outcome (Holm 1979, methods 4): those within
 * lots over all lots, treatments and storage times; those pooled over lots among themselves.
 */
export function adjusted(comparisons: readonly Comparison[]): readonly Comparison[] {
  const tested = comparisons.filter(({ test }) => test !== null);
  const family = (pooled: boolean) => tested.filter(({ lot }) => (lot === 'all') === pooled);
  const adjustedP = new Map<Comparison, number>();
  for (const members of [family(false), family(true)]) {
    const p = holm(members.map(({ test }) => test?.p ?? 1));
    members.forEach((member, index) => adjustedP.set(member, p[index] ?? 1));
  }
  return comparisons.map((comparison) => {
    const pAdjusted = adjustedP.get(comparison) ?? null;
    return comparison.test === null ? comparison : { ...comparison, test: { ...comparison.test, pAdjusted } };
  });
}
