import type { Result } from './analysis.ts';

/** Lots in the order of the results, all lots together first where they were pooled. */
export function lotsOf({ comparisons, groups }: Result): readonly string[] {
  return [...new Set([...comparisons.filter(({ lot }) => lot === 'all'), ...groups].map(({ lot }) => lot))];
}
