import type { Group, Result } from '../../analysis/analysis.ts';
import { rowsOfGroups } from '../../analysis/rows-of-groups.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';
import { withSeedLuck } from './with-seed-luck.ts';

interface Column {
  readonly head: string;
  cell(group: Group): string | null;
}

/**
 * One row a treatment of each lot (`rowsOfGroups`): how much there was, what came of it, what the data fit with.
 */
export function groupsTable(words: Words, trial: Trial, result: Result, ofLots: string | readonly string[]): TextTable {
  const lots = [ofLots].flat();
  const rows = rowsOfGroups(result, lots);
  const { ui } = words;
  const treatments = (group: Group) => rows.find(([first]) => first === group)?.map(({ treatment }) => treatment) ?? [];
  const isByLot = (result.measure === 'germination' || result.measure === 'trait') && daysDiffer(result, lots);
  const columns: readonly Column[] = [
    ...lotColumn(words, trial, lots),
    {
      head: ui['table.treatment'],
      cell: (group) => words.list(treatments(group).map((id) => words.treatmentLabel(trial, id))),
    },
    { head: ui['table.day'], cell: ({ lot }) => (isByLot ? words.number(result.days[lot] ?? 0) : null) },
    { head: ui['table.stored'], cell: ({ stored }) => (stored === null ? null : words.quantity(stored, 'years')) },
    { head: ui['table.units'], cell: (group) => words.units(trial, group) },
    {
      head: ui['table.count'],
      cell: ({ count, seeds }) =>
        count === null || seeds === null ? null : words.say('table.countOf', { count, seeds }),
    },
    {
      head: ui[result.measure === 'trait' ? 'table.plants' : 'table.germinated'],
      cell: ({ plants }) => (plants === null ? null : words.number(plants)),
    },
    { head: ui['table.estimate'], cell: (group) => words.quantity(group.estimate, result.unit, group.seeds) },
    {
      head: ui['table.interval'],
      cell: (group) => rangeText(words, result, group),
    },
    {
      head: ui['stats.bracket'],
      cell: ({ bracket }) =>
        bracket === null || bracket.after === null || bracket.by === null
          ? null
          : words.say('stats.limits', { lower: words.number(bracket.after), upper: words.number(bracket.by) }),
    },
  ];
  const first = rows.flatMap(([group]) => group ?? []);
  return { names: lots.length > 1 ? 2 : 1, ...filledColumns(first, columns) };
}

/** Shares of fewer than 200 seeds without decimals; with one unit the range holds the luck of seeds alone, and says so. */
function rangeText(words: Words, { measure }: Result, { interval, seeds }: Group): string | null {
  if (interval?.lower == null || interval.upper == null) return null;
  const digits = measure === 'germination' && (seeds ?? 0) < 200 ? 0 : 1;
  const range = words.say('stats.limits', {
    lower: words.number(interval.lower, digits),
    upper: words.number(interval.upper, digits),
  });
  return withSeedLuck(words, range, interval);
}

/** Spread between units and between plants, for readers with statistics; no rows where there is none to tell. */
export function spreadTable(words: Words, trial: Trial, result: Result, ofLots: string | readonly string[]): TextTable {
  const lots = [ofLots].flat();
  const naming = lots.length > 1 ? 2 : 1;
  const { ui } = words;
  const number = (value: number | null) => (value === null ? null : words.number(value, 3));
  const table = filledColumns(groupsIn(result, lots), [
    ...lotColumn(words, trial, lots),
    { head: ui['table.treatment'], cell: (group) => words.treatmentLabel(trial, group.treatment) },
    { head: ui['stats.sd'], cell: ({ sd }) => number(sd) },
    { head: ui['stats.plantSd'], cell: ({ plantSd }) => number(plantSd) },
    { head: ui['stats.icc'], cell: ({ icc }) => number(icc) },
  ]);
  return table.head.length > naming ? { names: naming, ...table } : { head: [], rows: [] };
}

/** Whether lots were counted on days of their own, so that each row must say its day. */
const daysDiffer = ({ days }: Result, lots: readonly string[]): boolean =>
  lots.every((lot) => days[lot] !== undefined) && new Set(lots.map((lot) => days[lot])).size > 1;

const groupsIn = (result: Result, lots: readonly string[]) =>
  lots.flatMap((lot) => result.groups.filter((group) => group.lot === lot));

/** Names the lot, where there are several. */
function lotColumn({ ui, lotName }: Words, trial: Trial, lots: readonly string[]): readonly Column[] {
  return lots.length > 1 ? [{ head: ui['table.lot'], cell: ({ lot }) => lotName(trial, lot) }] : [];
}

function filledColumns(groups: readonly Group[], columns: readonly Column[]): TextTable {
  const filled = columns.filter(({ cell }) => groups.some((group) => cell(group) !== null));
  return {
    head: filled.map(({ head }) => head),
    rows: groups.map((group) => filled.map(({ cell }) => cell(group) ?? '')),
  };
}
