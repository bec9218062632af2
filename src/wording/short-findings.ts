import type { Analysis, Comparison, Result } from '../analysis/analysis.ts';

/**
 * The comparisons of the primary outcome, pooled ones first. Where that is a storage series, which compares lines, those
 * of its last test in each lot.
 */
export function shortFindings({
  results,
}: Analysis): readonly { readonly result: Result; readonly comparison: Comparison }[] {
  const primary = results.find((each) => each.primary) ?? results[0];
  const isSeries = primary?.measure === 'storage';
  const result = isSeries ? results.find(({ measure }) => measure === 'germination') : primary;
  if (result === undefined) return [];
  const pooled = result.comparisons.filter(({ lot }) => lot === 'all');
  const single = result.comparisons.filter(({ lot }) => lot !== 'all');
  const shown = [...pooled, ...single].filter((comparison) => !isSeries || isLast(result, comparison));
  return shown.map((comparison) => ({ result, comparison }));
}

const isLast = ({ comparisons }: Result, { lot, stored }: Comparison): boolean =>
  comparisons.every((other) => other.lot !== lot || (other.stored ?? 0) <= (stored ?? 0));
