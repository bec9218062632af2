import type { Analysis, Caveat } from '../analysis/analysis.ts';
import { rowsOfGroups } from '../analysis/rows-of-groups.ts';

/** Whether what a caveat says of one treatment at the start of a series is said of sowings that stand for every treatment. */
export function isOfAll({ results }: Analysis, { outcome, lot, treatment }: Caveat, stored: number | null): boolean {
  const result = results.find((one) => one.outcome === outcome);
  if (stored !== 0 || !result || lot === null) return false;
  const row = rowsOfGroups(result, [lot]).find((groups) =>
    groups.some((group) => group.stored === 0 && group.treatment === treatment),
  );
  return row !== undefined && row.length > 1;
}
