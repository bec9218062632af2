import type { Result } from '../../analysis/analysis.ts';
import { groupsTable } from '../../wording/tables/groups-table.ts';
import type { TextTable } from '../../wording/tables/numbers-table.ts';
import type { Block, Table } from '../document.ts';
import type { About } from './about.ts';

/** Per lot of the primary outcome what came of each treatment, then every comparison of every outcome. */
export function numbers(about: About): Block[] {
  const { trial, analysis, words } = about;
  const { ui } = words;
  const primary = analysis.results.find((result) => result.primary) ?? analysis.results[0];
  if (!primary) return [];
  const title = words.outcomeTitle(trial, primary);
  return [
    { kind: 'heading', level: 2, text: ui['print.numbers'] },
    ...groupTables(about, primary).map((table) => tableOf(table, title)),
    tableOf(comparisonsTable(about, analysis.results), ui['print.comparisons']),
  ];
}

/** The page's tables of one outcome: lots whose tables have the same columns stand in one, the lot in front. */
function groupTables({ trial, words }: About, result: Result): TextTable[] {
  const lots = [...new Set(result.groups.map(({ lot }) => lot))];
  const tables = lots.map((lot) => ({ lot, ...groupsTable(words, trial, result, lot) }));
  if (tables.length === 1) return tables;
  return [...Map.groupBy(tables, ({ head }) => head.join('\n')).values()].map((alike) => ({
    head: [words.ui['table.lot'], ...(alike[0]?.head ?? [])],
    rows: alike.flatMap(({ lot, rows }) => rows.map((row) => [words.lotName(trial, lot), ...row])),
  }));
}

/** A row a comparison: what the sentences say, in columns. */
function comparisonsTable({ trial, words }: About, results: readonly Result[]): TextTable {
  const { ui } = words;
  const several = results.length > 1;
  const rows = results.flatMap((result) =>
    result.comparisons.map((comparison) => {
      const { interval, estimate } = comparison;
      return [
        ...(several ? [words.outcomeTitle(trial, result)] : []),
        words.comparisonName(trial, comparison),
        interval?.method === 'welch-bracket' ? ui['table.notKnown'] : words.difference(estimate, result),
        interval && interval.lower !== null && interval.upper !== null
          ? words.range(interval.lower, interval.upper, result.measure, comparison.unit)
          : ui['table.none'],
        words.verdict(result, comparison).words,
      ];
    }),
  );
  return {
    head: [
      ...(several ? [ui['table.outcome']] : []),
      ui['table.comparison'],
      ui['table.difference'],
      ui['table.interval'],
      ui['table.finding'],
    ],
    rows,
  };
}

function tableOf({ head, rows }: TextTable, caption: string): Table {
  return {
    kind: 'table',
    caption,
    head,
    rows,
    widths: head.map((title, index) => ({ share: shareOf([title, ...rows.map((row) => row[index] ?? '')]) })),
    figures: [],
    rules: 'lines',
    rowHeight: 0,
  };
}

/** A column gets room by its longest cell, within reason. */
const shareOf = (cells: readonly string[]) => Math.min(44, Math.max(9, ...cells.map(({ length }) => length)));
