import type { Words } from '../wording/words.ts';
import { LEADING, SMALL } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';
import type { Scale } from './nice-scale.ts';
import { PLOT_WIDTH } from './row-layout.ts';

/** A horizontal axis of values; its ends, ticks and their labels are parameters (`scaleParams`). */
export const valueAxis = (field: string): Encoding['x'] => ({
  field,
  type: 'quantitative',
  scale: { domain: [{ expr: 'low' }, { expr: 'high' }], nice: false, zero: false },
  axis: { values: { expr: 'ticks' }, labelExpr: 'tickLabels[indexof(ticks, datum.value)]', grid: true },
});

/** Parameters of `valueAxis`; all labels with as many digits after the point as the finest tick needs. */
export function scaleParams({ low, high, ticks }: Scale, words: Words) {
  const digits = Math.max(0, ...ticks.map((tick) => String(Number(tick.toPrecision(9))).split('.')[1]?.length ?? 0));
  return [
    { name: 'low', value: low },
    { name: 'high', value: high },
    { name: 'ticks', value: [...ticks] },
    { name: 'tickLabels', value: ticks.map((tick) => words.number(tick, digits)) },
  ];
}

/** The title under the axis, and the room that axis and title take. */
export function axisTitle(title: string, height: number) {
  const lines = fitText(title, PLOT_WIDTH, SMALL, 2);
  return {
    lines: lines.map((text, index) => ({ x: PLOT_WIDTH / 2, y: height + 40 + index * LEADING, text })),
    bottom: 46 + (lines.length - 1) * LEADING,
  };
}

/** Draws the dataset `axisTitle`. */
export const AXIS_TITLE: Layers[number] = {
  name: 'axisTitle',
  data: { name: 'axisTitle' },
  mark: { type: 'text', fontSize: SMALL, align: 'center' },
  encoding: { x: place('x'), y: place('y'), text: raw('text') },
};
