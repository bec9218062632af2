import type { TopLevelSpec } from 'vega-lite';
import type { Comparison, Result } from '../analysis/analysis.ts';
import type { Relabelled } from '../analysis/relabelled.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { INK } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { niceScale } from './nice-scale.ts';
import { plotFrame } from './plot-frame.ts';
import { PLOT_WIDTH, ROW_WORDS, rowLayout, type RowText } from './row-layout.ts';
import { spreadDots } from './spread-dots.ts';
import { treatmentStyle } from './treatment-style.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

/** A comparison with its units dealt anew, and its name where several are shown. */
export interface Dealt {
  readonly comparison: Comparison;
  readonly found: Relabelled;
  readonly name: string;
}

const DOT = 9;
const REAL = 24; // height of the real difference
const PILE = 24; // how far a pile of dots may grow to either side
const LOW_PILE = 14; // where several comparisons stand under one another

/** The picture of `luckStrip`: the real difference above the dealt ones; of several comparisons a row each. */
export function luckPlot(trial: Trial, result: Result, all: readonly Dealt[], words: Words): TopLevelSpec {
  const scale = niceScale([0, ...all.flatMap(({ found: { real, others } }) => [real, ...others])]);
  const pile = all.length > 1 ? LOW_PILE : PILE;
  const layout = rowLayout(all.length > 1 ? all.map((one) => rowOf(one, result, words)) : rowsOf(all, result, words));
  const places = all.map((_, index) => {
    const [first, second] = [layout.rows[index]?.middle ?? 0, layout.rows[1]?.middle ?? 0];
    if (all.length === 1) return { above: first, below: second };
    return { above: first - pile - DOT / 2, below: first + REAL / 2 };
  });
  const along = (value: number) => ((value - scale.low) / (scale.high - scale.low)) * PLOT_WIDTH;
  const axis = axisTitle(axisWords(result, words), layout.height);
  return {
    ...plotFrame(layout.height, axis.bottom),
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      axisTitle: axis.lines,
      zero: [{ zero: 0, y: 0, y2: layout.height }],
      dots: all.flatMap(({ found: { others } }, row) => {
        const moves = spreadDots(others.map(along), DOT, pile);
        return others.map((at, index) => ({ at, y: (places[row]?.below ?? 0) + (moves[index] ?? 0) }));
      }),
      real: all.map(({ comparison: { treatment }, found: { real } }, row) => ({
        at: real,
        y: places[row]?.above ?? 0,
        ...treatmentStyle(trial, treatment),
      })),
    },
    layer: LAYERS,
  };
}

/** Of one comparison: a row for what was, one for what was dealt. */
function rowsOf(all: readonly Dealt[], result: Result, words: Words): RowText[] {
  return all.flatMap(({ found: { real, others } }) => [
    { label: words.ui['luck.real'], notes: [words.difference(real, result)], picture: REAL },
    {
      label: words.ui['luck.dealt'],
      notes: [words.say('luck.times', { deals: words.number(others.length) })],
      picture: 2 * PILE + DOT,
    },
  ]);
}

function rowOf({ name, found: { real, others, asLarge } }: Dealt, result: Result, words: Words): RowText {
  const counts = { count: words.number(asLarge), deals: words.number(others.length) };
  return {
    label: name,
    notes: [words.difference(real, result), words.say('luck.asLarge', counts)],
    picture: REAL + 2 * LOW_PILE + DOT,
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
