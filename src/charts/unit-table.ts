import type { Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { withSeedLuck } from '../wording/tables/with-seed-luck.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import type { GroupRow } from './group-rows.ts';
import { valueText } from './value-text.ts';

export const inBlocks = (rows: readonly GroupRow[]): boolean =>
  rows.some(({ units }) => units.some(({ block }) => block !== null));

/** The numbers of `units`: a row for each unit, then one for its group with the interval. */
export function unitTable(trial: Trial, result: Result, rows: readonly GroupRow[], words: Words): Chart['table'] {
  const { ui } = words;
  const columns = {
    lots: new Set(rows.map(({ group }) => group.lot)).size > 1,
    stored: rows.some(({ group }) => group.stored !== null),
    blocks: inBlocks(rows),
    counts: result.values.some(({ count }) => count !== null),
  };
  const said = (value: number | null) => valueText(value, result, words);
  const line = ({ lot, block, count, ...cells }: Line) => [
    ...(columns.lots ? [lot] : []),
    cells.label,
    ...(columns.stored ? [cells.stored] : []),
    cells.unit,
    ...(columns.blocks ? [block] : []),
    ...(columns.counts ? [count] : []),
    cells.value,
    cells.interval,
  ];
  return {
    names: 2 + Number(columns.lots) + Number(columns.stored),
    head: line({
      lot: ui['table.lot'],
      label: ui['table.treatment'],
      stored: ui['table.stored'],
      unit: ui['table.unit'],
      block: ui['table.block'],
      count: ui['table.count'],
      value: ui['table.value'],
      interval: ui['table.interval'],
    }),
    rows: rows.flatMap(({ label, group, units }) => {
      const stored = group.stored === null ? '' : words.quantity(group.stored, 'years');
      const of = { lot: words.lotName(trial, group.lot), label, stored };
      return [
        ...units.map(({ unit, block, count, seeds, value }) =>
          line({
            ...of,
            unit,
            block: block ?? '',
            count: countOf(count, seeds, words),
            value: said(value),
            interval: '',
          }),
        ),
        line({
          ...of,
          unit: ui['chart.together'],
          block: '',
          count: countOf(group.count ?? sumOf(units, 'count'), group.seeds ?? sumOf(units, 'seeds'), words),
          value: said(group.estimate),
          interval: group.interval
            ? withSeedLuck(
                words,
                words.say('chart.fromTo', { lower: said(group.interval.lower), upper: said(group.interval.upper) }),
                group.interval,
              )
            : ui['table.none'],
        }),
      ];
    }),
  };
}

type Line = Readonly<Record<'lot' | 'label' | 'stored' | 'unit' | 'block' | 'count' | 'value' | 'interval', string>>;

/** Times have no count of their own: that of their units, where all are known. */
const sumOf = (units: GroupRow['units'], of: 'count' | 'seeds'): number | null =>
  units.reduce<number | null>((sum, unit) => (sum === null || unit[of] === null ? null : sum + unit[of]), 0);

const countOf = (count: number | null, seeds: number | null, words: Words) =>
  count === null || seeds === null
    ? words.ui['table.notKnown']
    : words.say('chart.countOf', { count: words.number(count), all: words.number(seeds) });
