import type { TopLevelSpec } from 'vega-lite';
import type { Words } from '../wording/words.ts';
import { PAPER } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { INTERVAL_LAYERS, intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { plotFrame } from './plot-frame.ts';
import { PLOT_WIDTH, ROW_WORDS, rowLayout } from './row-layout.ts';
import { spreadDots } from './spread-dots.ts';
import type { TraitRow } from './trait.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

const LINE = 15; // from one unit's line to the next
const CLOSE = 12; // where several lots stand under one another
const ESTIMATE = 22; // room for the group's own line
const PLANT = 4;
const PILE = 5;

/** The picture of `trait`: in each row a line of plants for each unit, then the group's mean and interval. */
export function traitPlot(rows: readonly TraitRow[], scale: Scale, title: string, words: Words): TopLevelSpec {
  const step = rows.some(({ heading }) => heading !== null) ? CLOSE : LINE;
  const picture = (units: number) => units * step + ESTIMATE;
  const layout = rowLayout(
    rows.map(({ heading, label, notes, measuredUnits }) => ({
      heading,
      label,
      notes,
      picture: picture(measuredUnits.length),
    })),
  );
  const axis = axisTitle(title, layout.height);
  const at = (value: number) => ((value - scale.low) / (scale.high - scale.low)) * PLOT_WIDTH;
  const drawn = rows.map((row, index) => {
    const top = (layout.rows[index]?.middle ?? 0) - picture(row.measuredUnits.length) / 2;
    const units = row.measuredUnits.map((unit, line) => ({ ...unit, y: top + (line + 0.5) * step }));
    return { ...row, units, y: top + units.length * step + ESTIMATE / 2 };
  });
  return {
    ...plotFrame(layout.height, axis.bottom),
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      ...intervalMarks(
        drawn.map(({ group: { estimate, interval }, style, y }) => ({ estimate, interval, style, y })),
        scale,
      ),
      axisTitle: axis.lines,
      plants: drawn.flatMap(({ units, style: { colour } }) =>
        units.flatMap(({ measured, y }) => {
          const moves = spreadDots(measured.map(at), PLANT, PILE);
          return measured.map((value, index) => ({ at: value, y: y + (moves[index] ?? 0), colour }));
        }),
      ),
      means: drawn.flatMap(({ units, style: { colour, fill, shape } }) =>
        units.flatMap(({ value, y }) =>
          value === null ? [] : [{ at: value, y, colour: fill === PAPER ? colour : PAPER, fill, shape }],
        ),
      ),
    },
    layer: LAYERS,
  };
}

const x = valueAxis('at');
const y = place('y');
const stroke = raw('colour');

const LAYERS: Layers = [
  {
    name: 'plants',
    data: { name: 'plants' },
    mark: { type: 'point', size: 9, strokeWidth: 0 },
    encoding: { x, y, fill: stroke },
  },
  {
    name: 'means',
    data: { name: 'means' },
    mark: { type: 'point', size: 85, strokeWidth: 1.75 },
    encoding: { x, y, stroke, fill: raw('fill'), shape: raw('shape') },
  },
  ...INTERVAL_LAYERS,
  ...ROW_WORDS,
  AXIS_TITLE,
];
