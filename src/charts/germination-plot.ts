import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { checkDays, type Course } from './germination-course.ts';
import { keepApart } from './keep-apart.ts';
import { risers, share, shareText, stepLine, treads } from './step-line.ts';
import { KEY_LAYERS, LEFT_OUT_DASH, THICK, THIN, treatmentKey } from './treatment-key.ts';
import { treatmentStyle } from './treatment-style.ts';

const LEFT = 34;
const RIGHT = 41; // room for the last share at the end of a line
const TITLE = 36; // room for the title of the y axis, between key and plot
const PLOT = { width: WIDTH - LEFT - RIGHT, height: 230 };

/**
 * All treatments of a lot in one plot, under a key that shows each line as it is drawn.
 *
 * @param counted the day that the outcome compares; marked unless it is the last
 */
export function germinationPlot(
  trial: Trial,
  courses: readonly Course[],
  words: Words,
  counted: number | null,
): TopLevelSpec {
  const days = checkDays(courses);
  const last = Math.max(1, ...days);
  const labelled = axisLabels(days, (day) => (day / last) * PLOT.width, words.number);
  const key = treatmentKey(trial, courses, words, { x: -LEFT, width: WIDTH });
  const top = key.height + TITLE;
  const early = counted !== null && counted < last ? [counted] : [];
  const dayTitle = early.length
    ? words.say('chart.dayCompared', { day: words.number(counted ?? 0) })
    : words.ui['chart.day'];
  return {
    ...PLOT,
    padding: { left: LEFT, top, right: RIGHT, bottom: 44 },
    params: [
      { name: 'days', value: days },
      { name: 'dayLabels', value: days.map((day) => (labelled.includes(day) ? words.number(day) : '')) },
      { name: 'last', value: last },
    ],
    datasets: {
      ...linesOf(trial, courses),
      counted: early.map((day) => ({ day })),
      key: key.rows.map((row) => ({ ...row, y: row.y - top })),
      keyLeftOut: key.leftOut.map((row) => ({ ...row, y: row.y - top })),
      title: [{ x: -LEFT, y: -14, text: words.ui['chart.germinated'] }],
      dayTitle: [{ x: PLOT.width / 2, y: PLOT.height + 40, text: dayTitle }],
      ends: endsOf(courses, last, words),
    },
    layer: LAYERS,
  };
}

function linesOf(trial: Trial, courses: readonly Course[]) {
  const pooled = courses.map(({ treatment, together }) => ({
    together,
    look: treatmentStyle(trial, treatment),
  }));
  return {
    sowings: courses.flatMap(({ treatment, sowings }) => {
      const { colour } = treatmentStyle(trial, treatment);
      return sowings.flatMap(({ sowing, leftOut, checks }) =>
        stepLine(sowing.id, checks, { colour, dash: leftOut ? LEFT_OUT_DASH : [1, 0] }),
      );
    }),
    risers: pooled.flatMap(({ together, look }) => risers(together, look)),
    treads: pooled.flatMap(({ together, look }) => treads(together, look)),
    checks: pooled.flatMap(({ together, look }) =>
      together.map((check) => ({ ...look, day: check.day, share: share(check) })),
    ),
  };
}

/** The last share of each treatment, written at the end of its line. */
function endsOf(courses: readonly Course[], last: number, words: Words) {
  const ends = courses.flatMap(({ together }) => together.at(-1) ?? []);
  const wanted = ends.map((check) => (PLOT.height * (100 - share(check))) / 100);
  const y = keepApart(wanted, SMALL + 1, PLOT.height);
  return ends.map((check, index) => ({
    x: (check.day / last) * PLOT.width + 9,
    y: y[index],
    text: shareText(check, words),
  }));
}

const x: Encoding['x'] = {
  field: 'day',
  type: 'quantitative',
  scale: { domain: [0, { expr: 'last' }], nice: false },
  axis: { values: { expr: 'days' }, labelExpr: 'dayLabels[indexof(days, datum.value)]' },
};
const y: Encoding['y'] = {
  field: 'share',
  type: 'quantitative',
  scale: { domain: [0, 100] },
  axis: { values: [0, 20, 40, 60, 80, 100], grid: true, ticks: false, labelPadding: 6 },
};
const line: Encoding = { stroke: raw('colour'), strokeDash: raw('dash') };
const mark: Encoding = { stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') };
const words: Encoding = { x: place('x'), y: place('y'), text: raw('text') };
const LAYERS: Layers = [
  {
    name: 'counted',
    data: { name: 'counted' },
    mark: { type: 'rule', strokeDash: [1, 4] },
    encoding: { x },
  },
  {
    name: 'sowings',
    data: { name: 'sowings' },
    mark: { type: 'line', interpolate: 'step-after', strokeWidth: THIN },
    encoding: { x, y, detail: { field: 'line', type: 'nominal' }, ...line },
  },
  {
    name: 'risers',
    data: { name: 'risers' },
    mark: { type: 'rule', strokeWidth: THIN },
    encoding: { x, y, y2: { field: 'from' }, stroke: raw('colour') },
  },
  {
    name: 'treads',
    data: { name: 'treads' },
    mark: { type: 'rule', strokeWidth: THICK },
    encoding: { x, x2: { field: 'until' }, y, ...line },
  },
  { name: 'checks', data: { name: 'checks' }, mark: { type: 'point', size: 56 }, encoding: { x, y, ...mark } },
  {
    name: 'ends',
    data: { name: 'ends' },
    mark: { type: 'text', baseline: 'middle', fontWeight: 600 },
    encoding: words,
  },
  { name: 'title', data: { name: 'title' }, mark: { type: 'text', fontSize: SMALL }, encoding: words },
  {
    name: 'dayTitle',
    data: { name: 'dayTitle' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: words,
  },
  ...KEY_LAYERS,
];
