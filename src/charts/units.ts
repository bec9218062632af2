import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { axisTitle, groupRows, unitName, type GroupRow } from './group-rows.ts';
import { groupScale } from './group-scale.ts';
import { intervalNotes } from './interval-marks.ts';
import { unitPlot } from './unit-plot.ts';
import { inBlocks, unitTable } from './unit-table.ts';
import { valueText } from './value-text.ts';

/**
 * Every unit (tray, dish, batch) of a lot as a dot, by treatment; units of one block are joined. Under the dots the group's
 * estimate with its interval: the reader sees what the interval was made of. Several lots stand under one another on one axis.
 */
export function units(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  ofLots: string | readonly string[],
  words: Words,
): Chart {
  const lots = [ofLots].flat();
  const rows = groupRows(trial, result, lots, words);
  const scale = groupScale(
    rows.flatMap(({ units: all }) => all.map(({ value }) => value)),
    rows.map(({ group }) => group),
    result.measure === 'germination' ? [0, 100] : undefined,
  );
  return {
    kind: 'units',
    title: titleOf(trial, analysis, result, lots, rows, words),
    subtitle: [
      subtitleOf(trial, result, lots, rows, words),
      ...(startIsShared(rows) ? [words.say('chart.startShared', { unit: words.unitWord(trial, true) })] : []),
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
    table: unitTable(trial, result, rows, words),
    spec: unitPlot(rows, scale, axisTitle(trial, result, words), words),
  };
}

/** For germination how far the units ranged, since the curves above have the finding as title; else the finding. */
function titleOf(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lots: readonly string[],
  rows: readonly GroupRow[],
  words: Words,
) {
  if (result.measure !== 'germination') {
    return chartTitle(
      trial,
      analysis,
      result,
      result.comparisons.filter(({ lot }) => lots.includes(lot)),
      words,
    );
  }
  const ranges = rows.flatMap(({ label, units: all }) => {
    const values = all.flatMap(({ value }) => value ?? []);
    const [least, most] = [Math.min(...values), Math.max(...values)];
    const said = (value: number) => valueText(value, result, words);
    if (values.length < 2) return [];
    if (least === most) return [words.say('chart.headlineOf', { name: label, value: said(least) })];
    return [words.say('chart.unitsRange', { name: label, lower: said(least), upper: said(most) })];
  });
  const title = words.say('chart.units.title', { unit: unitName(trial, rows, words) });
  return ranges.length === 0 || ranges.length > 2
    ? title
    : words.say('chart.units.titleRanges', { title, ranges: ranges.join('; ') });
}

function subtitleOf(
  trial: Trial,
  result: Result,
  lots: readonly string[],
  rows: readonly GroupRow[],
  words: Words,
): string {
  const unit = unitName(trial, rows, words);
  const [day, ...others] = [...new Set(lots.map((lot) => result.days[lot]))];
  if (day === undefined || others.length > 0 || result.measure !== 'germination')
    return words.say('chart.units.subtitleNoDay', { unit });
  const values = { unit, day: words.number(day) };
  if (!inBlocks(rows)) return words.say('chart.units.subtitle', values);
  return words.say('chart.units.subtitleBlocks', { ...values, block: trial.sowing.block ?? words.ui['chart.aBlock'] });
}

/** True where a series was sown once at the start, and that sowing is drawn for each treatment. */
function startIsShared(rows: readonly GroupRow[]): boolean {
  const drawn = rows.flatMap(({ units }) => units.filter(({ stored }) => stored === 0));
  return new Set(drawn.map(({ lot, unit }) => `${lot} ${unit}`)).size < drawn.length;
}

function inWords(trial: Trial, result: Result, { group, units: all }: GroupRow, words: Words): string {
  const values = all.map(({ value }) => valueText(value, result, words));
  return words.say('chart.groupWithUnits', {
    group: words.groupSentence(trial, result, group),
    units: words.units(trial, group),
    values: words.list(values),
  });
}
