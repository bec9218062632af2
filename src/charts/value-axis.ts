import type { Words } from '../wording/words.ts';
import type { Encoding } from './encoding.ts';
import type { Scale } from './nice-scale.ts';

/** A horizontal axis of values; its ends, ticks and their labels are parameters (`scaleParams`). */
export const valueAxis = (field: string): Encoding['x'] => ({
  field,
  type: 'quantitative',
  scale: { domain: [{ expr: 'low' }, { expr: 'high' }], nice: false, zero: false },
  axis: { values: { expr: 'ticks' }, labelExpr: 'tickLabels[indexof(ticks, datum.value)]' },
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
