import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import { chosenResult, type Choice } from './chosen-result.ts';
import { oneOf } from './one-of.ts';

export interface TableChoice extends Choice {
  /** What came up by treatment, the numbers for statisticians, or all counts. */
  readonly of?: string | undefined;
}
const TABLES = ['groups', 'numbers', 'counts'] as const;

/**
 * The table that an author placed.
 *
 * @throws {AttributeError} for a choice that the trial does not have
 */
export function chosenTable(
  analysis: Analysis,
  choice: TableChoice,
): { result: Result; lot: string; comparisons: readonly Comparison[]; of: (typeof TABLES)[number] } {
  return { ...chosenResult('Table', analysis, choice), of: oneOf('<Table of>', choice.of, TABLES) };
}
