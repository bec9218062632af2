import type { Interval } from '../analysis/analysis.ts';
import { seedLuckOnly } from '../analysis/seed-luck-only.ts';
import type { Words } from '../wording/words.ts';
import { PAPER } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import type { Scale } from './nice-scale.ts';
import type { TreatmentStyle } from './series-style.ts';
import { valueAxis } from './value-axis.ts';

/** An estimate with its interval, and the height in the drawing at which it stands. */
export interface Estimated {
  readonly estimate: number | null;
  readonly interval: Interval | null;
  readonly style: TreatmentStyle;
  readonly y: number;
}

/** What a reader must know about how these intervals are drawn: dashes and arrows, where there are any. */
export function intervalNotes(intervals: readonly (Interval | null)[], { low, high }: Scale, words: Words): string[] {
  const goesOn = intervals.some((interval) => (interval?.lower ?? low) < low || (interval?.upper ?? high) > high);
  return [
    ...(intervals.some(seedLuckOnly) ? [words.ui['chart.seedLuckOnly']] : []),
    ...(goesOn ? [words.ui['chart.goesOn']] : []),
  ];
}

/** Rows of data for `INTERVAL_LAYERS`. */
export function intervalMarks(all: readonly Estimated[], { low, high }: Scale) {
  const drawn = all.flatMap(({ interval, style, y }) =>
    interval?.lower == null || interval.upper == null
      ? []
      : [{ lower: interval.lower, upper: interval.upper, colour: style.colour, y, hollow: seedLuckOnly(interval) }],
  );
  return {
    intervals: drawn.map(({ lower, upper, colour, y, hollow }) => ({
      lower: Math.max(low, lower),
      upper: Math.min(high, upper),
      colour,
      y,
      dash: hollow ? [4, 3] : [1, 0],
    })),
    arrows: drawn.flatMap(({ lower, upper, colour, y }) => [
      ...(lower < low ? [{ at: low, colour, y, shape: 'triangle-left' }] : []),
      ...(upper > high ? [{ at: high, colour, y, shape: 'triangle-right' }] : []),
    ]),
    estimates: all.flatMap(({ estimate, interval, style: { colour, fill, shape }, y }) =>
      estimate === null ? [] : [{ at: estimate, colour, fill: seedLuckOnly(interval) ? PAPER : fill, shape, y }],
    ),
  };
}

const y = place('y');
const stroke = raw('colour');

/** Draws the datasets of `intervalMarks` on a `valueAxis`. */
export const INTERVAL_LAYERS: Layers = [
  {
    name: 'intervals',
    data: { name: 'intervals' },
    mark: { type: 'rule', strokeWidth: 3 },
    encoding: { x: valueAxis('lower'), x2: { field: 'upper' }, y, stroke, strokeDash: raw('dash') },
  },
  {
    name: 'arrows',
    data: { name: 'arrows' },
    mark: { type: 'point', size: 60 },
    encoding: { x: valueAxis('at'), y, stroke, fill: stroke, shape: raw('shape') },
  },
  {
    name: 'estimates',
    data: { name: 'estimates' },
    mark: { type: 'point', size: 110 },
    encoding: { x: valueAxis('at'), y, stroke, fill: raw('fill'), shape: raw('shape') },
  },
];
