import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { TextTable } from '../../wording/tables/numbers-table.ts';
import type { About } from './about.ts';
import { comparisonCells, differenceHead } from './comparison-cells.ts';

/** Comparisons of lots together, a row a treatment. */
export function togetherTable({ trial, words }: About, result: Result, comparisons: readonly Comparison[]): TextTable {
  return {
    head: [words.ui['table.treatment'], ...differenceHead(words)],
    rows: comparisons.map((comparison) => [
      words.treatmentLabel(trial, comparison.treatment),
      ...comparisonCells(words, result, comparison),
    ]),
  };
}
