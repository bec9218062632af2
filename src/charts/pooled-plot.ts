import type { TopLevelSpec } from 'vega-lite';
import type { Range } from '../analysis/analysis.ts';
import type { Pooled } from '../analysis/pooled.ts';
import type { Words } from '../wording/words.ts';
import { INK, LEADING, PAPER } from './chart-theme.ts';
import { DIFFERENCE_LAYERS } from './difference-layers.ts';
import { differenceWays } from './difference-ways.ts';
import { place } from './encoding.ts';
import { intervalMarks } from './interval-marks.ts';
import type { Scale } from './nice-scale.ts';
import { LABEL_GAP, LABEL_WIDTH, PLOT_WIDTH, RIGHT, rowLayout } from './row-layout.ts';
import { stripLabel } from './strip-label.ts';
import { scaleParams } from './value-axis.ts';

/** One row of the picture. */
export interface PooledLine {
  /** `one-tray`: alone it cannot tell; drawn dashed with an open mark of the same size. */
  readonly kind: 'trial' | 'one-tray' | 'together' | 'next';
  readonly label: string;
  readonly notes: readonly string[];
  /** Null: a range without a mark. */
  readonly estimate: number | null;
  readonly range: Range;
}

/** The picture of `pooledChart`: every mark in ink and of one size, told apart by shape and dash. */
export function pooledPlot(pooled: Pooled, lines: readonly PooledLine[], scale: Scale, words: Words): TopLevelSpec {
  const layout = rowLayout(lines.map(({ label, notes }) => ({ label, notes, picture: 30 })));
  const above = stripLabel(pooled.matters === null ? null : words.ui['chart.tooSmallUnfixed'], scale);
  const first = lines.findIndex(({ kind }) => kind === 'together');
  const marks = lines.map(({ kind, estimate, range: { lower, upper } }, index) => ({
    estimate,
    interval: { level: 0.95, lower, upper, method: kind === 'one-tray' ? ('newcombe-seeds-only' as const) : ('welch' as const) },
    style: { colour: INK, fill: kind === 'one-tray' ? PAPER : INK, dash: [1, 0], shape: kind === 'together' ? 'diamond' : 'circle' },
    y: layout.rows[index]?.middle ?? 0,
  })); // prettier-ignore
  const { matters } = pooled;
  return {
    width: PLOT_WIDTH,
    height: layout.height,
    padding: { left: LABEL_WIDTH + LABEL_GAP, top: 10 + above.length * LEADING, right: RIGHT, bottom: 48 },
    params: scaleParams(scale, words),
    datasets: {
      ...layout.words,
      ...intervalMarks(marks, scale),
      strips: matters === null ? [] : [{ lower: -matters, upper: matters, top: 0, bottom: layout.height }],
      zero: [{ zero: 0, y: -4, y2: layout.height }],
      above,
      ways: differenceWays(pooled, layout.height + 40, words),
      divider: first < 0 ? [] : [{ x: -LABEL_WIDTH - LABEL_GAP, x2: PLOT_WIDTH, y: layout.rows[first]?.top ?? 0 }],
    },
    layer: [
      ...DIFFERENCE_LAYERS,
      {
        name: 'divider',
        data: { name: 'divider' },
        mark: { type: 'rule' },
        encoding: { x: place('x'), x2: { field: 'x2' }, y: place('y') },
      },
    ],
  };
}
