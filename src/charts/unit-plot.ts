import type { TopLevelSpec } from 'vega-lite';
import type { Words } from '../wording/words.ts';
import { place, raw, type Layers } from './encoding.ts';
import type { GroupRow } from './group-rows.ts';
import { INTERVAL_LAYERS, intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { plotFrame } from './plot-frame.ts';
import { PLOT_WIDTH, ROW_WORDS, rowLayout } from './row-layout.ts';
import { spreadDots } from './spread-dots.ts';
import { AXIS_TITLE, axisTitle, scaleParams, valueAxis } from './value-axis.ts';

const DOT = 9;
const PILE = 11; // how far a pile of dots may grow to either side
const BESIDE = 12; // dots stand this far above the middle of their row, the estimate as far below

/** The picture of `units`: a row a group, dots above, estimate and interval below. */
export function unitPlot(rows: readonly GroupRow[], scale: Scale, title: string, words: Words): TopLevelSpec {
  const layout = rowLayout(
    rows.map(({ heading, label, notes }) => ({ heading, label, notes, picture: 2 * (BESIDE + PILE) + DOT })),
  );
  const middles = layout.rows.map(({ middle }) => middle);
  const dots = rows.flatMap((row, index) => dotsOf(row, index, (middles[index] ?? 0) - BESIDE, scale));
  const estimates = rows.map(({ group: { estimate, interval }, style }, index) => {
    return { estimate, interval, style, y: (middles[index] ?? 0) + BESIDE };
  });
  const axis = axisTitle(title, layout.height);
  return {
    ...plotFrame(layout.height, axis.bottom),
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      ...intervalMarks(estimates, scale),
      axisTitle: axis.lines,
      dots,
      joins: joinsOf(dots),
    },
    layer: LAYERS,
  };
}

function dotsOf({ units, style }: GroupRow, row: number, y: number, { low, high }: Scale) {
  const known = units.flatMap(({ lot, value, block }) => (value === null ? [] : [{ at: value, lot, block }]));
  const moves = spreadDots(
    known.map(({ at }) => ((at - low) / (high - low)) * PLOT_WIDTH),
    DOT,
    PILE,
  );
  return known.map((dot, index) => ({ ...dot, ...style, row, y: y + (moves[index] ?? 0) }));
}

/** From every unit of a block to every unit of it in the next row of the lot that has any. */
function joinsOf(dots: ReturnType<typeof dotsOf>) {
  const blocks = Map.groupBy(
    dots.filter(({ block }) => block !== null),
    ({ lot, block }) => JSON.stringify([lot, block]),
  );
  return [...blocks.values()].flatMap((block) => {
    const rows = [...Map.groupBy(block, ({ row }) => row).values()];
    return rows.flatMap((row, index) =>
      row.flatMap(({ at, y }) => (rows[index + 1] ?? []).map((next) => ({ at, y, to: next.at, toY: next.y }))),
    );
  });
}

const y = place('y');

const LAYERS: Layers = [
  {
    name: 'joins',
    data: { name: 'joins' },
    mark: { type: 'rule', strokeWidth: 0.9, strokeOpacity: 0.5 },
    encoding: { x: valueAxis('at'), x2: { field: 'to' }, y, y2: { field: 'toY' } },
  },
  {
    name: 'dots',
    data: { name: 'dots' },
    mark: { type: 'point', size: 42, strokeWidth: 1.5 },
    encoding: { x: valueAxis('at'), y, stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') },
  },
  ...INTERVAL_LAYERS,
  ...ROW_WORDS,
  AXIS_TITLE,
];
