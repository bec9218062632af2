import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { SMALL } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { leftInWords, type WeighedPair } from './masses.ts';
import { niceScale } from './nice-scale.ts';
import { plotFrame } from './plot-frame.ts';
import { PLOT_WIDTH, ROW_WORDS, rowLayout } from './row-layout.ts';
import { CONTROL_STYLE } from './series-style.ts';
import { treatmentStyle } from './treatment-style.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

const LINE = 18; // from one weighing's line to the next
const BEFORE = 100;

/** The picture of `masses`: a row for each lot and treatment, in it a line for each weighing from before to after. */
export function massPlot(trial: Trial, pairs: readonly WeighedPair[], words: Words): TopLevelSpec {
  const groups = [...Map.groupBy(pairs, ({ lot, treatment }) => `${lot} ${treatment}`).values()];
  const scale = niceScale([
    BEFORE,
    ...pairs.flatMap(({ left, range }) => (range ? [left, range.lower, range.upper] : [left])),
  ]);
  const layout = rowLayout(groups.map((group) => ({ ...rowText(trial, group, words), picture: group.length * LINE })));
  const axis = axisTitle(words.ui['chart.masses.axis'], layout.height);
  const drawn = groups.flatMap((group, index) =>
    group.map((pair, line) => ({
      ...pair,
      ...(pair.treatment === null ? CONTROL_STYLE : treatmentStyle(trial, pair.treatment)),
      y: (layout.rows[index]?.middle ?? 0) + (line - (group.length - 1) / 2) * LINE,
    })),
  );
  const at = ((BEFORE - scale.low) / (scale.high - scale.low)) * PLOT_WIDTH;
  return {
    ...plotFrame(layout.height, axis.bottom, 24),
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      axisTitle: axis.lines,
      zero: [{ before: BEFORE, y: -4, y2: layout.height }],
      beforeLabel: [{ x: Math.min(at, PLOT_WIDTH), y: -9, text: words.ui['chart.before'] }],
      ways: drawn.map(({ left, colour, y }) => ({ left, before: BEFORE, colour, y })),
      ranges: drawn.flatMap(({ range, colour, y }) => (range ? [{ ...range, colour, y }] : [])),
      after: drawn.map(({ left, colour, fill, shape, y }) => ({ left, colour, fill, shape, y })),
    },
    layer: LAYERS,
  };
}

function rowText(trial: Trial, group: readonly WeighedPair[], words: Words) {
  const [first] = group;
  const lot = words.lotName(trial, first?.lot ?? '');
  const notes = [leftInWords(group, words)];
  if (first?.treatment == null) return { label: lot, notes };
  return {
    label: words.treatmentLabel(trial, first.treatment),
    notes: trial.lots.length > 1 ? [lot, ...notes] : notes,
  };
}

const y = place('y');
const stroke = raw('colour');

const LAYERS: Layers = [
  {
    name: 'zero',
    data: { name: 'zero' },
    mark: { type: 'rule' },
    encoding: { x: valueAxis('before'), y, y2: { field: 'y2' } },
  },
  {
    name: 'beforeLabel',
    data: { name: 'beforeLabel' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: { x: place('x'), y, text: raw('text') },
  },
  {
    name: 'ways',
    data: { name: 'ways' },
    mark: { type: 'rule', strokeWidth: 1 },
    encoding: { x: valueAxis('before'), x2: { field: 'left' }, y, stroke },
  },
  {
    name: 'ranges',
    data: { name: 'ranges' },
    mark: { type: 'rule', strokeWidth: 3.5 },
    encoding: { x: valueAxis('lower'), x2: { field: 'upper' }, y, stroke },
  },
  {
    name: 'after',
    data: { name: 'after' },
    mark: { type: 'point', size: 45 },
    encoding: { x: valueAxis('left'), y, stroke, fill: raw('fill'), shape: raw('shape') },
  },
  ...ROW_WORDS,
  AXIS_TITLE,
];
