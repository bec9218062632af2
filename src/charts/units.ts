import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { axisTitle, groupRows, unitName, type GroupRow } from './group-rows.ts';
import { groupScale } from './group-scale.ts';
import { intervalNotes } from './interval-marks.ts';
import { unitPlot } from './unit-plot.ts';

/**
 * Every unit (tray, dish, batch) of one lot as a dot, by treatment; units of one block are joined. Under the dots the group's
 * estimate with its interval: the reader sees what the interval was made of.
 */
export function units(trial: Trial, analysis: Analysis, result: Result, lot: string, words: Words): Chart {
  const rows = groupRows(trial, result, lot, words);
  const scale = groupScale(
    rows.flatMap(({ units: all }) => all.map(({ value }) => value)),
    rows.map(({ group }) => group),
    result.measure === 'germination' ? [0, 100] : undefined,
  );
  return {
    kind: 'units',
    title: titleOf(trial, analysis, result, lot, rows, words),
    subtitle: [
      subtitleOf(trial, result, lot, rows, words),
      ...intervalNotes(
        rows.map(({ group }) => group.interval),
        scale,
        words,
      ),
    ].join(' '),
    description: words.say('chart.units.description', {
      unit: unitName(trial, rows, words),
      values: rows.map((row) => inWords(trial, result, row, words)).join(' '),
    }),
    table: tableOf(result, rows, words),
    spec: unitPlot(rows, scale, axisTitle(trial, result, words), words),
  };
}

/** For germination how far the units ranged, since the curves above have the finding as title; else the finding. */
function titleOf(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lot: string,
  rows: readonly GroupRow[],
  words: Words,
) {
  if (result.measure !== 'germination') {
    return chartTitle(
      trial,
      analysis,
      result,
      result.comparisons.filter((found) => found.lot === lot),
      words,
    );
  }
  const ranges = rows.flatMap(({ label, group, units: all }) => {
    const values = all.flatMap(({ value }) => value ?? []);
    const [least, most] = [Math.min(...values), Math.max(...values)];
    const said = (value: number) => words.quantity(value, result.unit, group.seeds);
    if (values.length < 2) return [];
    return [words.say('chart.unitsRange', { name: label, lower: said(least), upper: said(most) })];
  });
  const title = words.say('chart.units.title', { unit: unitName(trial, rows, words) });
  return ranges.length === 0 || ranges.length > 2
    ? title
    : words.say('chart.units.titleRanges', { title, ranges: ranges.join('; ') });
}

function subtitleOf(trial: Trial, result: Result, lot: string, rows: readonly GroupRow[], words: Words): string {
  const unit = unitName(trial, rows, words);
  const day = result.days[lot];
  if (day === undefined) return words.say('chart.units.subtitleNoDay', { unit });
  const values = { unit, day: words.number(day) };
  if (!inBlocks(rows)) return words.say('chart.units.subtitle', values);
  return words.say('chart.units.subtitleBlocks', { ...values, block: trial.sowing.block ?? words.ui['chart.aBlock'] });
}

const inBlocks = (rows: readonly GroupRow[]) => rows.some(({ units: all }) => all.some(({ block }) => block !== null));

function inWords(trial: Trial, result: Result, { group, units: all }: GroupRow, words: Words): string {
  const values = all.map(({ value }) => words.quantity(value, result.unit, group.seeds));
  return words.say('chart.groupWithUnits', {
    group: words.groupSentence(trial, result, group),
    units: words.units(trial, group),
    values: words.list(values),
  });
}

function tableOf(result: Result, rows: readonly GroupRow[], words: Words): Chart['table'] {
  const blocks = inBlocks(rows);
  const counted = result.values.some(({ count }) => count !== null);
  const said = (value: number | null, group: GroupRow['group']) => words.quantity(value, result.unit, group.seeds);
  const line = (label: string, unit: string, block: string | null, count: string, value: string, interval: string) => [
    label,
    unit,
    ...(blocks ? [block ?? ''] : []),
    ...(counted ? [count] : []),
    value,
    interval,
  ];
  const { ui } = words;
  return {
    head: line(
      ui['table.treatment'],
      ui['table.unit'],
      ui['table.block'],
      ui['table.count'],
      ui['table.value'],
      ui['table.interval'],
    ),
    rows: rows.flatMap(({ label, group, units: all }) => [
      ...all.map(({ unit, block, count, seeds, value }) =>
        line(label, unit, block, countOf(count, seeds, words), said(value, group), ''),
      ),
      line(
        label,
        ui['chart.together'],
        null,
        countOf(group.count, group.seeds, words),
        said(group.estimate, group),
        group.interval
          ? words.say('chart.fromTo', {
              lower: said(group.interval.lower, group),
              upper: said(group.interval.upper, group),
            })
          : ui['table.none'],
      ),
    ]),
  };
}

const countOf = (count: number | null, seeds: number | null, words: Words) =>
  count === null || seeds === null
    ? words.ui['table.notKnown']
    : words.say('chart.countOf', { count: words.number(count), all: words.number(seeds) });
