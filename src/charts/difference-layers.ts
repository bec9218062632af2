import { INK, PALE, SMALL } from './chart-theme.ts';
import { place, raw, type Layers } from './encoding.ts';
import { INTERVAL_LAYERS } from './interval-marks.ts';
import { ROW_WORDS } from './row-layout.ts';
import { valueAxis } from './value-axis.ts';

/**
 * Draws differences with their intervals, a row each: the datasets `strips`, `zero`, those of `intervalMarks` and of a
 * row layout, `above` (stripLabel) and `ways` (differenceWays).
 */
export const DIFFERENCE_LAYERS: Layers = [
  {
    name: 'strips',
    data: { name: 'strips' },
    mark: { type: 'rect', color: INK, opacity: PALE },
    encoding: { x: valueAxis('lower'), x2: { field: 'upper' }, y: place('top'), y2: { field: 'bottom' } },
  },
  {
    name: 'zero',
    data: { name: 'zero' },
    mark: { type: 'rule' },
    encoding: { x: valueAxis('zero'), y: place('y'), y2: { field: 'y2' } },
  },
  ...INTERVAL_LAYERS,
  ...ROW_WORDS,
  {
    name: 'above',
    data: { name: 'above' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: { x: place('x'), y: place('y'), text: raw('text') },
  },
  ...(['left', 'center', 'right'] as const).map((align) => ({
    name: `ways-${align}`,
    data: { name: 'ways' },
    transform: [{ filter: `datum.align === '${align}'` }],
    mark: { type: 'text' as const, fontSize: SMALL, align },
    encoding: { x: place('x'), y: place('y'), text: raw('text') },
  })),
];
