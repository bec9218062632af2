import type { TopLevelSpec } from 'vega-lite';
import { seedLuckOnly } from '../analysis/seed-luck-only.ts';
import { daysBetween } from '../trial/text/days-between.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { PAPER, SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { keyRows } from './key-rows.ts';
import type { LotSeries } from './lot-germination.ts';
import { KEY_LAYERS, THIN } from './treatment-key.ts';

const LEFT = 34;
const RIGHT = 30;
const TITLE = 36;
const APART = 9; // between marks of one date
const PLOT = { width: WIDTH - LEFT - RIGHT, height: 210 };

/** Share that came up by date, of every series of a lot; the first and the last date at the ends of the plot. */
export function lotPlot(series: readonly LotSeries[], words: Words): TopLevelSpec {
  const dates = [...new Set(series.flatMap(({ tests }) => tests.map(({ date }) => date)))].sort();
  const first = dates[0] ?? '';
  const span = Math.max(1, daysBetween(first, dates.at(-1) ?? first));
  const days = dates.map((date) => daysBetween(first, date));
  const onDate = (date: string) => series.filter(({ tests }) => tests.some((test) => test.date === date));
  const inset = (Math.max(1, ...dates.map((date) => onDate(date).length)) * APART) / 2;
  const at = (day: number) => inset + (day / span) * (PLOT.width - 2 * inset);
  const label = (day: number) => (dates[days.indexOf(day)] ?? '').slice(0, 7);
  const labelled = axisLabels(firstOfEach(days, label), at, label);
  const marks = series.flatMap((one, index) =>
    marksOf(one, index, (date) => {
      const beside = onDate(date);
      return at(daysBetween(first, date)) + (beside.indexOf(one) - (beside.length - 1) / 2) * APART;
    }),
  );
  const key = keyRows(series, { x: -LEFT, width: WIDTH });
  const top = key.height + TITLE;
  return {
    ...PLOT,
    padding: { left: LEFT, top, right: RIGHT, bottom: 44 },
    datasets: {
      marks,
      key: key.rows.map((row) => ({ ...row, y: row.y - top })),
      ticks: days.map((day) => ({ x: at(day), y: PLOT.height, y2: PLOT.height + 5 })),
      dates: labelled.map((day) => ({ x: at(day), y: PLOT.height + 19, text: label(day) })),
      title: [{ x: -LEFT, y: -14, text: words.ui['chart.germinated'] }],
      dateTitle: [{ x: PLOT.width / 2, y: PLOT.height + 40, text: words.ui['chart.lot.date'] }],
    },
    layer: LAYERS,
  };
}

/** A month is named once, where its first date stands. */
const firstOfEach = (days: readonly number[], label: (day: number) => string): number[] =>
  days.filter((day, index) => days.findIndex((other) => label(other) === label(day)) === index);

/** Marks of one date stand side by side, so that none hides another. */
function marksOf({ style, tests }: LotSeries, index: number, at: (date: string) => number) {
  return tests.map(({ date, group: { estimate, interval } }) => ({
    ...style,
    fill: seedLuckOnly(interval) ? PAPER : style.fill,
    rangeDash: seedLuckOnly(interval) ? [4, 3] : [1, 0],
    line: index,
    x: at(date),
    share: estimate,
    lower: interval?.lower ?? estimate,
    upper: interval?.upper ?? estimate,
  }));
}

const x = place('x');
const share = (field: string): Encoding['y'] => ({
  field,
  type: 'quantitative',
  scale: { domain: [0, 100] },
  axis: { values: [0, 20, 40, 60, 80, 100], grid: true, ticks: false, labelPadding: 6 },
});
const words: Encoding = { x, y: place('y'), text: raw('text') };
const LAYERS: Layers = [
  {
    name: 'joins',
    data: { name: 'marks' },
    mark: { type: 'line', strokeWidth: THIN },
    encoding: {
      x,
      y: share('share'),
      detail: { field: 'line', type: 'nominal' },
      stroke: raw('colour'),
      strokeDash: raw('dash'),
    },
  },
  {
    name: 'ranges',
    data: { name: 'marks' },
    mark: { type: 'rule', strokeWidth: 2 },
    encoding: { x, y: share('lower'), y2: { field: 'upper' }, stroke: raw('colour'), strokeDash: raw('rangeDash') },
  },
  {
    name: 'tests',
    data: { name: 'marks' },
    mark: { type: 'point', size: 64 },
    encoding: { x, y: share('share'), stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') },
  },
  {
    name: 'ticks',
    data: { name: 'ticks' },
    mark: { type: 'rule' },
    encoding: { x, y: place('y'), y2: { field: 'y2' } },
  },
  { name: 'dates', data: { name: 'dates' }, mark: { type: 'text', fontSize: SMALL, align: 'center' }, encoding: words },
  { name: 'title', data: { name: 'title' }, mark: { type: 'text', fontSize: SMALL }, encoding: words },
  {
    name: 'dateTitle',
    data: { name: 'dateTitle' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: words,
  },
  ...KEY_LAYERS,
];
