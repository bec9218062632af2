import type { Comparison, Result } from '../../analysis/analysis.ts';
import type { TextTable } from '../../wording/tables/numbers-table.ts';
import type { About } from './about.ts';
import { comparisonCells, comparisonHead } from './comparison-cells.ts';

/** A row a comparison: what the sentences say, in columns; the outcome in front where there are several. */
export function comparisonsTable(
  about: About,
  compared: readonly { readonly result: Result; readonly comparisons: readonly Comparison[] }[],
  several: boolean,
): TextTable {
  const { trial, words } = about;
  const { ui } = words;
  return {
    head: [...(several ? [ui['table.outcome']] : []), ui['table.comparison'], ...comparisonHead(words)],
    rows: compared.flatMap(({ result, comparisons }) =>
      comparisons.map((comparison) => [
        ...(several ? [words.outcomeTitle(trial, result)] : []),
        words.comparisonName(trial, comparison),
        ...comparisonCells(words, result, comparison),
      ]),
    ),
  };
}
