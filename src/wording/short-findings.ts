import type { Analysis, Comparison, Result } from '../analysis/analysis.ts';

/** The comparisons of the primary outcome, pooled ones first. */
export function shortFindings({
  results,
}: Analysis): readonly { readonly result: Result; readonly comparison: Comparison }[] {
  const result = results.find(({ primary }) => primary) ?? results[0];
  if (result === undefined) return [];
  const pooled = result.comparisons.filter(({ lot }) => lot === 'all');
  const single = result.comparisons.filter(({ lot }) => lot !== 'all');
  return [...pooled, ...single].map((comparison) => ({ result, comparison }));
}
