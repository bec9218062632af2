import type { Chart } from './chart.ts';

/** A chart that is small enough to be drawn without Vega, in a reader's browser: `svg` is finished and needs no script. */
export interface DrawnChart extends Omit<Chart, 'spec' | 'kind'> {
  readonly svg: string;
}
