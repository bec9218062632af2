import type { Comparison, Result } from '../../analysis/analysis.ts';
import { rowsOfGroups } from '../../analysis/rows-of-groups.ts';
import { groupsTable } from '../../wording/tables/groups-table.ts';
import type { TextTable } from '../../wording/tables/numbers-table.ts';
import type { About } from './about.ts';
import { comparisonCells, differenceHead } from './comparison-cells.ts';

/**
 * The page's tables of one outcome, a row a treatment: lots whose tables have the same columns stand in one, the lot in
 * front.
 *
 * @param compared comparisons that stand in the rows of their treatments; none: as on the page
 */
export function groupTables(about: About, result: Result, compared: readonly Comparison[]): TextTable[] {
  const { trial, words } = about;
  const lots = [...new Set(result.groups.map(({ lot }) => lot))];
  const tables = lots.map((lot) => ({ lot, ...withComparisons(about, result, lot, compared) }));
  if (tables.length === 1) return tables;
  return [...Map.groupBy(tables, ({ head }) => head.join('\n')).values()].map((alike) => ({
    head: [words.ui['table.lot'], ...(alike[0]?.head ?? [])],
    rows: alike.flatMap(({ lot, rows }) => rows.map((row) => [words.lotName(trial, lot), ...row])),
  }));
}

function withComparisons({ trial, words }: About, result: Result, lot: string, compared: readonly Comparison[]) {
  const { head, rows } = groupsTable(words, trial, result, lot);
  if (compared.length === 0) return { head, rows };
  const groups = rowsOfGroups(result, [lot]).map(([first]) => first);
  const controls = new Set(compared.map(({ control }) => control));
  return {
    head: [...head, ...differenceHead(words)],
    rows: rows.map((row, index) => {
      const { treatment, stored } = groups[index] ?? {};
      const own = compared.find((one) => one.lot === lot && one.treatment === treatment && one.stored === stored);
      if (own) return [...row, ...comparisonCells(words, result, own)];
      return [...row, controls.has(treatment ?? '') ? words.ui['print.isControl'] : '', '', ''];
    }),
  };
}
