import type { Analysis, Result, UnitValue } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { axisTitle, groupRows, unitName, type GroupRow } from './group-rows.ts';
import { groupScale } from './group-scale.ts';
import { intervalNotes } from './interval-marks.ts';
import { traitPlot } from './trait-plot.ts';
import { valueText } from './value-text.ts';

/** A unit with the plants measured in it. */
export interface MeasuredUnit extends UnitValue {
  readonly measured: readonly number[];
}
export interface TraitRow extends GroupRow {
  readonly measuredUnits: readonly MeasuredUnit[];
}

/**
 * A trait of every plant of a lot: a line of small dots for each unit with the unit's mean on it, and the group's mean with its
 * interval under them. Plants of one tray share its luck; the picture shows how much trays differ beside how much plants do.
 * Several lots stand under one another on one axis.
 */
export function trait(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  ofLots: string | readonly string[],
  words: Words,
): Chart {
  const lots = [ofLots].flat();
  const rows = groupRows(trial, result, lots, words).map((row) => ({
    ...row,
    measuredUnits: row.units.map((unit) => ({ ...unit, measured: plantsOf(trial, result, unit) })),
  }));
  const units = rows.flatMap(({ measuredUnits }) => measuredUnits);
  const scale = groupScale(
    units.flatMap(({ value, measured }) => [value, ...measured]),
    rows.map(({ group }) => group),
  );
  const comparisons = result.comparisons.filter(({ lot }) => lots.includes(lot));
  const unit = unitName(trial, rows, words);
  const notes = intervalNotes(
    rows.map(({ group }) => group.interval),
    scale,
    words,
  );
  const plants = units.some(({ measured }) => measured.length > 0);
  const days = new Set(lots.map((lot) => result.days[lot] ?? result.day ?? 0));
  const day = words.list([...days].map((number) => words.number(number)));
  return {
    kind: 'trait',
    title: chartTitle(trial, analysis, result, comparisons, words),
    subtitle: [words.say(plants ? 'chart.trait.subtitle' : 'chart.units.subtitle', { unit, day }), ...notes].join(' '),
    description: words.say('chart.trait.description', {
      name: words.outcomeTitle(trial, result),
      values: rows.map((row) => inWords(trial, result, row, words)).join(' '),
    }),
    table: tableOf(trial, result, rows, words),
    spec: traitPlot(rows, scale, axisTitle(trial, result, words), words),
  };
}

function plantsOf(trial: Trial, { column, days }: Result, { lot, sowings }: UnitValue): number[] {
  return trial.measurements.flatMap(({ sowing, day, plant, values }) => {
    const value = values[column ?? ''];
    return sowings.includes(sowing) && day === days[lot] && plant !== null && value != null ? [value] : [];
  });
}

function inWords(trial: Trial, result: Result, { group, units }: GroupRow, words: Words): string {
  return words.say('chart.groupWithUnits', {
    group: words.groupSentence(trial, result, group),
    units: words.units(trial, group),
    values: words.list(units.map(({ value }) => valueText(value, result, words))),
  });
}

function tableOf(trial: Trial, result: Result, rows: readonly TraitRow[], words: Words): Chart['table'] {
  const { ui } = words;
  const said = (value: number | null) => valueText(value, result, words);
  const several = new Set(rows.map(({ group }) => group.lot)).size > 1;
  const named = ({ label, group }: GroupRow) => (several ? [words.lotName(trial, group.lot), label] : [label]);
  return {
    names: several ? 3 : 2,
    head: [
      ...(several ? [ui['table.lot']] : []),
      ui['table.treatment'],
      ui['table.unit'],
      ui['table.plants'],
      ui['table.mean'],
      ui['table.interval'],
    ],
    rows: rows.flatMap((row) => [
      ...row.measuredUnits.map(({ unit, measured, value }) => [
        ...named(row),
        unit,
        measured.length ? measured.map((plant) => words.number(plant)).join('; ') : ui['table.none'],
        said(value),
        '',
      ]),
      [
        ...named(row),
        ui['chart.together'],
        words.number(row.group.plants ?? 0),
        said(row.group.estimate),
        row.group.interval
          ? words.say('chart.fromTo', { lower: said(row.group.interval.lower), upper: said(row.group.interval.upper) })
          : ui['table.none'],
      ],
    ]),
  };
}
