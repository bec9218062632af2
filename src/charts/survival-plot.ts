import type { TopLevelSpec } from 'vega-lite';
import type { SurvivalLine } from '../analysis/survival-line.ts';
import { survivalCurve } from '../analysis/storage/survival-curve.ts';
import type { Trial } from '../trial/trial.ts';
import { storageTime } from '../wording/storage-time.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { PALE, SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import type { GroupRow } from './group-rows.ts';
import { keepApart } from './keep-apart.ts';
import { roundedShare } from './value-text.ts';
import { KEY_LAYERS, treatmentKey } from './treatment-key.ts';
import { treatmentStyle } from './treatment-style.ts';

const LEFT = 34;
const RIGHT = 41; // room for the last share at the end of a line
const TITLE = 36; // room for the title of the y axis, between key and plot
const PLOT = { width: WIDTH - LEFT - RIGHT, height: 230 };
const INSET = 14; // the first and the last test stand this far inside, so that their marks do too
const APART = 7; // marks of two treatments at one test stand this far apart

/** The fitted line of the control is dashed as well: no line here was seen, each is worked out. */
const CONTROL_DASH = [4, 4];

/** The picture of `survival`: marks with ranges at the tests, fitted lines between the first and the last. */
export function survivalPlot(
  trial: Trial,
  rows: readonly GroupRow[],
  lines: readonly SurvivalLine[],
  words: Words,
): TopLevelSpec {
  const treatments = [...new Set(rows.map(({ group }) => group.treatment))];
  const times = [...new Set(rows.map(({ group }) => group.stored ?? 0))].sort((a, b) => a - b);
  const [first, last] = [Math.min(0, ...times), Math.max(...times, 0)];
  const x = (years: number) => INSET + ((years - first) / (last - first || 1)) * (PLOT.width - 2 * INSET);
  const y = (percent: number) => ((100 - percent) / 100) * PLOT.height;
  const beside = (treatment: string) => (treatments.indexOf(treatment) - (treatments.length - 1) / 2) * Math.min(APART, 28 / treatments.length); // prettier-ignore
  const key = treatmentKey(trial, treatments.map((treatment) => ({ treatment, sowings: [], together: [] })), words, { x: -LEFT, width: WIDTH }); // prettier-ignore
  const top = key.height + TITLE;
  const { perYear, unit } = storageTime(last);
  const number = (years: number) =>
    words.number(years * perYear, Number.isInteger(Number((years * perYear).toFixed(1))) ? 0 : 1);
  const labelled = axisLabels(times, x, number);
  return {
    ...PLOT,
    padding: { left: LEFT, top, right: RIGHT, bottom: 44 },
    datasets: {
      grid: GRID.map((percent) => ({ x: 0, x2: PLOT.width, y: y(percent) })),
      half: [{ x: 0, x2: PLOT.width, y: y(50) }],
      shares: GRID.map((percent) => ({ x: -8, y: y(percent), text: words.number(percent) })),
      ticks: times.map((years) => ({ x: x(years), y: PLOT.height, y2: PLOT.height + 5 })),
      times: labelled.map((years) => ({ x: x(years), y: PLOT.height + 20, text: number(years) })),
      axes: [{ x: -LEFT, y: -14, text: words.ui['chart.germinated'] }],
      timeTitle: [
        { x: PLOT.width / 2, y: PLOT.height + 40, text: words.say('chart.stored', { unit: words.unitName(unit) }) },
      ],
      ...marksOf(rows, x, y, beside),
      lines: lines.flatMap((line) => {
        const { colour, dash } = dashed(treatmentStyle(trial, line.treatment));
        return survivalCurve(line).map(({ stored, percent }) => ({ x: x(stored), y: y(percent), line: line.treatment, colour, dash })); // prettier-ignore
      }),
      ends: endsOf(rows, treatments, x, y, words),
      key: key.rows.map((row) => ({ ...row, ...dashed(row), y: row.y - top })),
      keyLeftOut: [],
    },
    layer: LAYERS,
  };
}

const dashed = <Style extends { readonly dash: readonly number[]; readonly colour: string }>({
  colour,
  dash,
}: Style) => ({
  colour,
  dash: dash[1] === 0 ? CONTROL_DASH : dash,
});

function marksOf(
  rows: readonly GroupRow[],
  x: (years: number) => number,
  y: (percent: number) => number,
  beside: (treatment: string) => number,
) {
  const placed = rows.map(({ group, style }) => ({
    ...style,
    group,
    x: x(group.stored ?? 0) + beside(group.treatment),
  }));
  return {
    ranges: placed.flatMap(
      ({ group: { interval }, x: at, colour }) =>
      interval?.lower == null || interval.upper == null
        ? []
        : [{ x: at, y: y(interval.lower), y2: y(interval.upper), colour, dash: interval.method === 'wilson-seeds-only' ? [4, 3] : [1, 0] }], // prettier-ignore
    ),
    tests: placed.flatMap(({ group: { estimate }, x: at, colour, fill, shape }) =>
      estimate === null ? [] : [{ x: at, y: y(estimate), colour, fill, shape }],
    ),
  };
}

/** The last share of each treatment, written at the right. */
function endsOf(
  rows: readonly GroupRow[],
  treatments: readonly string[],
  x: (years: number) => number,
  y: (percent: number) => number,
  words: Words,
) {
  const ends = treatments.flatMap(
    (treatment) => rows.findLast(({ group }) => group.treatment === treatment && group.estimate !== null)?.group ?? [],
  );
  const places = keepApart(
    ends.map(({ estimate }) => y(estimate ?? 0)),
    SMALL + 1,
    PLOT.height,
  );
  return ends.map(({ estimate, stored }, index) => {
    const { value, digits } = roundedShare(estimate ?? 0);
    return { x: x(stored ?? 0) + INSET + 9, y: places[index] ?? 0, text: words.number(value, digits) };
  });
}

const GRID = [0, 20, 40, 60, 80, 100];
const x = place('x');
const y = place('y');
const text: Encoding = { x, y, text: raw('text') };

const LAYERS: Layers = [
  {
    name: 'grid',
    data: { name: 'grid' },
    mark: { type: 'rule', opacity: PALE },
    encoding: { x, x2: { field: 'x2' }, y },
  },
  {
    name: 'half',
    data: { name: 'half' },
    mark: { type: 'rule', strokeDash: [1, 4] },
    encoding: { x, x2: { field: 'x2' }, y },
  },
  { name: 'ticks', data: { name: 'ticks' }, mark: { type: 'rule' }, encoding: { x, y, y2: { field: 'y2' } } },
  {
    name: 'lines',
    data: { name: 'lines' },
    mark: { type: 'line', strokeWidth: 1.75 },
    encoding: {
      x,
      y,
      order: { field: 'x', type: 'quantitative' },
      detail: { field: 'line', type: 'nominal' },
      stroke: raw('colour'),
      strokeDash: raw('dash'),
    },
  },
  {
    name: 'ranges',
    data: { name: 'ranges' },
    mark: { type: 'rule', strokeWidth: 2.25 },
    encoding: { x, y, y2: { field: 'y2' }, stroke: raw('colour'), strokeDash: raw('dash') },
  },
  {
    name: 'tests',
    data: { name: 'tests' },
    mark: { type: 'point', size: 70 },
    encoding: { x, y, stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') },
  },
  {
    name: 'ends',
    data: { name: 'ends' },
    mark: { type: 'text', baseline: 'middle', fontWeight: 600 },
    encoding: text,
  },
  {
    name: 'shares',
    data: { name: 'shares' },
    mark: { type: 'text', fontSize: SMALL, align: 'right', baseline: 'middle' },
    encoding: text,
  },
  { name: 'times', data: { name: 'times' }, mark: { type: 'text', fontSize: SMALL, align: 'center' }, encoding: text },
  { name: 'axes', data: { name: 'axes' }, mark: { type: 'text', fontSize: SMALL }, encoding: text },
  {
    name: 'timeTitle',
    data: { name: 'timeTitle' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: text,
  },
  ...KEY_LAYERS,
];
