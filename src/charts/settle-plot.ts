import type { TopLevelSpec } from 'vega-lite';
import type { Comparison, Result } from '../analysis/analysis.ts';
import type { DetectableByUnits } from '../analysis/detectable-by-units.ts';
import { leftToSettle } from '../analysis/left-to-settle.ts';
import type { Trial } from '../trial/trial.ts';
import { detectableSize } from '../wording/detectable-size.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { INK } from './chart-theme.ts';
import { place, type Layers } from './encoding.ts';
import { niceScale } from './nice-scale.ts';
import { plotFrame } from './plot-frame.ts';
import { ROW_WORDS, rowLayout } from './row-layout.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

/**
 * What would settle a question that is open: a row for each number of units, a mark at the smallest difference that so many
 * would show, a line at the difference that matters.
 *
 * @returns null where the finding is not open, or nothing can be said (`leftToSettle`)
 */
export function settlePlot(trial: Trial, result: Result, comparison: Comparison, words: Words): Chart | null {
  const found = leftToSettle(result, comparison);
  const group = result.groups.find(({ lot, treatment }) => lot === comparison.lot && treatment === comparison.control);
  if (found === null || !group) return null;
  const unitsOf = (units: number) => words.units(trial, { ...group, units, unit: comparison.units.kind });
  const size = words.size(found.settles.difference, result);
  // Its other tests and treatments help a trial to judge the spread: then it shows a smaller difference than so many by themselves.
  const isShownBy = (detectable: number) =>
    comparison.detectable === null || sizeOf(comparison.detectable) === sizeOf(detectable);
  const isAlone = result.comparisons.length === 1;
  const sizeOf = (detectable: number) => words.size(detectableSize(detectable - 1e-9, result.measure), result);
  const rows = found.steps.map(({ units, detectable }) => ({
    label: words.say('luck.settle.each', { units: unitsOf(units) }),
    shown: words.say('luck.settle.from', { size: sizeOf(detectable) }),
    notes:
      units === comparison.units.treatment && units === comparison.units.control
        ? [words.ui[isShownBy(detectable) ? 'luck.settle.here' : 'luck.settle.asMany']]
        : [],
  }));
  return {
    kind: 'settle',
    title: words.say(isAlone ? 'luck.settle.title' : 'luck.settle.titleOf', {
      comparison: words.comparisonName(trial, comparison),
      units: unitsOf(found.settles.units),
      size,
    }),
    subtitle: words.say(found.assumed ? 'luck.settle.assumed' : 'luck.settle.asSeen', { size }),
    description: words.say('luck.settle.description', {
      values: rows.map(({ label, shown }) => words.say('chart.named', { name: label, values: shown })).join(' '),
    }),
    table: {
      head: [words.ui['table.units'], axisName(result, words)],
      rows: rows.map(({ label, shown }) => [label, shown]),
    },
    spec: plot(found, rows, axisName(result, words), words),
  };
}

const axisName = ({ measure, unit }: Result, words: Words): string =>
  measure === 'germination'
    ? words.ui['luck.settle.axis']
    : words.say('luck.settle.axisIn', { unit: words.unitName(unit) });

function plot(
  { steps, settles }: DetectableByUnits,
  rows: readonly { readonly label: string; readonly notes: readonly string[] }[],
  axisNamed: string,
  words: Words,
): TopLevelSpec {
  const scale = niceScale([0, settles.difference, ...steps.map(({ detectable }) => detectable)]);
  const layout = rowLayout(rows.map((row) => ({ ...row, picture: 14 })));
  const axis = axisTitle(axisNamed, layout.height);
  return {
    ...plotFrame(layout.height, axis.bottom),
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      axisTitle: axis.lines,
      wanted: [{ at: settles.difference, y: 0, y2: layout.height }],
      marks: steps.map(({ detectable }, index) => ({ at: detectable, y: layout.rows[index]?.middle ?? 0 })),
    },
    layer: LAYERS,
  };
}

const y = place('y');

const LAYERS: Layers = [
  {
    name: 'wanted',
    data: { name: 'wanted' },
    mark: { type: 'rule', strokeDash: [4, 3] },
    encoding: { x: valueAxis('at'), y, y2: { field: 'y2' } },
  },
  {
    name: 'marks',
    data: { name: 'marks' },
    mark: { type: 'point', size: 80, filled: true, color: INK, shape: 'diamond' },
    encoding: { x: valueAxis('at'), y },
  },
  ...ROW_WORDS,
  AXIS_TITLE,
];
