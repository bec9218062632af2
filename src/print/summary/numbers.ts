import type { Result } from '../../analysis/analysis.ts';
import { chartTitle } from '../../charts/chart-title.ts';
import type { TextTable } from '../../wording/tables/numbers-table.ts';
import type { Block, Table } from '../document.ts';
import type { About } from './about.ts';
import { comparisonsTable } from './comparisons-table.ts';
import { columnShares } from './column-shares.ts';
import { groupTables } from './group-tables.ts';
import type { Room } from './summary-document.ts';
import { togetherTable } from './together-table.ts';

/** More comparisons than these stand in the rows of their treatments, which would else be named twice. */
const MOST_APART = 6;

export interface Numbers {
  readonly blocks: readonly Block[];
  /** True where a table needs the width of the sheet. */
  readonly broad: boolean;
  /** True where they have every comparison of the primary outcome. */
  readonly complete: boolean;
  /** What only the report has, in words. */
  readonly leftOut: readonly string[];
}

/**
 * Per lot of the primary outcome what came of each treatment, then every comparison of every outcome. Where there is
 * no room for that, the numbers of other outcomes are left to the report, and rows beyond `room.rows`.
 */
export function numbers(about: About): (room: Room) => Numbers {
  const { trial, analysis, words } = about;
  const { ui } = words;
  const primary = analysis.results.find((result) => result.primary) ?? analysis.results[0];
  if (!primary) return () => ({ blocks: [], broad: false, complete: true, leftOut: [] });
  const title = words.outcomeTitle(trial, primary);
  const others = analysis.results.filter((result) => result !== primary);
  const { inRows, apart } = divided(primary);
  const tablesOf = (results: readonly Result[]): Captioned[] => {
    const compared = results.map((result) => ({
      result,
      comparisons: result === primary ? apart : result.comparisons,
    }));
    const together = inRows.length > 0 ? togetherTable(about, primary, apart) : { head: [], rows: [] };
    return [
      { caption: `${title}, ${ui['print.lotsTogether']}`, ...together },
      ...groupTables(about, primary, inRows).map((table) => ({ caption: title, ...table })),
      {
        caption: ui[inRows.length > 0 ? 'print.otherComparisons' : 'print.comparisons'],
        ...comparisonsTable(
          about,
          inRows.length > 0 ? compared.filter(({ result }) => result !== primary) : compared,
          analysis.results.length > 1,
        ),
      },
    ];
  };
  const inWords = others.map((result): Block => ({
    kind: 'text',
    style: 'label',
    text: `${chartTitle(trial, analysis, result, result.comparisons, words)}.`,
  }));
  const all = tablesOf(analysis.results).map(tableBlock);
  let primaryOnly = others.length > 0 ? undefined : all; // few summaries need it

  return (room) => {
    if (!room.others) primaryOnly ??= tablesOf([primary]).map(tableBlock);
    const { shown, left } = firstRows(primaryOnly && !room.others ? primaryOnly : all, room.rows);
    return {
      blocks: [{ kind: 'heading', level: 2, text: ui['print.numbers'] }, ...shown, ...(room.others ? [] : inWords)],
      broad: inRows.length > 0,
      complete: left === 0,
      leftOut: [
        ...(left > 0 ? [words.say('print.restRows', { rows: words.number(left) })] : []),
        ...(room.others || others.length === 0 ? [] : [ui['print.restOutcomes']]),
      ],
    };
  };
}

/** Comparisons in the rows of their treatments, and those apart: of lots together, or all where there are few. */
function divided({ measure, comparisons }: Result) {
  if (comparisons.length <= MOST_APART || measure === 'storage') return { inRows: [], apart: comparisons };
  return {
    inRows: comparisons.filter(({ lot }) => lot !== 'all'),
    apart: comparisons.filter(({ lot }) => lot === 'all'),
  };
}

type Captioned = TextTable & { readonly caption: string };

/** So many rows of some tables, and how many are left. */
function firstRows(tables: readonly Table[], most: number) {
  let room = most;
  let left = 0;
  const shown = tables.flatMap((table) => {
    const rows = table.rows.slice(0, Math.max(0, room));
    room -= rows.length;
    left += table.rows.length - rows.length;
    return rows.length > 0 ? [{ ...table, rows }] : [];
  });
  return { shown, left };
}

const tableBlock = ({ caption, head, rows }: Captioned): Table => ({
  kind: 'table',
  caption,
  head,
  rows,
  widths: columnShares(head, rows).map((share) => ({ share })),
  figures: [],
  rules: 'lines',
  rowHeight: 0,
});
