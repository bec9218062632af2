import type { TopLevelSpec } from 'vega-lite';
import type { Comparison, Result } from '../analysis/analysis.ts';
import { relabelled, type Relabelled } from '../analysis/relabelled.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import type { Chart } from './chart.ts';
import { INK } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { niceScale } from './nice-scale.ts';
import { LABEL_GAP, LABEL_WIDTH, PLOT_WIDTH, RIGHT, ROW_WORDS, rowLayout } from './row-layout.ts';
import { spreadDots } from './spread-dots.ts';
import { treatmentStyle } from './treatment-style.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

/**
 * What luck does: the real difference above those of 19 random relabellings of the same units. The draws come from
 * the trial's id, so that they are the same at every build.
 *
 * @returns null where there are too few arrangements, or nothing to relabel (`relabelled`)
 */
export function luckStrip(trial: Trial, result: Result, comparison: Comparison, words: Words): Chart | null {
  const found = relabelled(trial.id, result, comparison);
  if (found === null) return null;
  const deals = words.number(found.others.length);
  const sorted = found.others.toSorted((a, b) => a - b).map((value) => words.difference(value, result));
  const key = found.asLarge === 0 ? 'luck.none' : found.asLarge === 1 ? 'luck.one' : 'luck.some';
  const real = words.difference(found.real, result);
  return {
    kind: 'luck',
    title: `${words.comparisonName(trial, comparison)}: ${words.say(key, { deals, count: words.number(found.asLarge) })}`,
    subtitle: words.say(subtitleOf(comparison), {
      unit: words.unitWord(trial, true),
      all: words.number(found.others.length + 1),
    }),
    description: words.say('luck.description', { real, values: sorted.join(', ') }),
    table: {
      head: [words.ui['luck.labels'], words.ui['table.difference']],
      rows: [[words.ui['luck.real'], real], ...sorted.map((value) => [words.ui['luck.dealt'], value])],
    },
    spec: plot(trial, result, comparison, found, words),
  };
}

function subtitleOf({ units, lot }: Comparison): 'luck.subtitle' | 'luck.subtitleBlocks' | 'luck.subtitleLots' {
  if (units.kind !== 'block') return 'luck.subtitle';
  return lot === 'all' ? 'luck.subtitleLots' : 'luck.subtitleBlocks';
}

const DOT = 9;
const PILE = 24;

function plot(
  trial: Trial,
  result: Result,
  { treatment }: Comparison,
  { real, others }: Relabelled,
  words: Words,
): TopLevelSpec {
  const scale = niceScale([0, real, ...others]);
  const layout = rowLayout([
    { label: words.ui['luck.real'], notes: [words.difference(real, result)], picture: 24 },
    {
      label: words.ui['luck.dealt'],
      notes: [words.say('luck.times', { deals: words.number(others.length) })],
      picture: 2 * PILE + DOT,
    },
  ]);
  const [above = 0, below = 0] = layout.rows.map(({ middle }) => middle);
  const along = others.map((value) => ((value - scale.low) / (scale.high - scale.low)) * PLOT_WIDTH);
  const moves = spreadDots(along, DOT, PILE);
  const axis = axisTitle(axisWords(result, words), layout.height);
  return {
    width: PLOT_WIDTH,
    height: layout.height,
    padding: { left: LABEL_WIDTH + LABEL_GAP, top: 4, right: RIGHT, bottom: axis.bottom },
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      axisTitle: axis.lines,
      zero: [{ zero: 0, y: 0, y2: layout.height }],
      dots: others.map((at, index) => ({ at, y: below + (moves[index] ?? 0) })),
      real: [{ at: real, y: above, ...treatmentStyle(trial, treatment) }],
    },
    layer: LAYERS,
  };
}

function axisWords({ measure, unit }: Result, words: Words): string {
  if (measure === 'germination') return words.ui['chart.differencePoints'];
  if (measure === 't50' || measure === 'mgt') return words.ui['chart.differenceDays'];
  return unit === '' ? words.ui['chart.difference'] : words.say('chart.differenceIn', { unit: words.unitName(unit) });
}

const y = place('y');

const LAYERS: Layers = [
  {
    name: 'zero',
    data: { name: 'zero' },
    mark: { type: 'rule' },
    encoding: { x: valueAxis('zero'), y, y2: { field: 'y2' } },
  },
  {
    name: 'dots',
    data: { name: 'dots' },
    mark: { type: 'point', size: 42, strokeWidth: 1.5, stroke: INK, shape: 'circle' },
    encoding: { x: valueAxis('at'), y },
  },
  {
    name: 'real',
    data: { name: 'real' },
    mark: { type: 'point', size: 110 },
    encoding: { x: valueAxis('at'), y, stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') },
  },
  ...ROW_WORDS,
  AXIS_TITLE,
];
