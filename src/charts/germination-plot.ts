import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import type { Course } from './germination-course.ts';
import { keepApart } from './keep-apart.ts';

import { share, stepLine } from './step-line.ts';
import { treatmentKey } from './treatment-key.ts';
import { treatmentStyle } from './treatment-style.ts';

const SIDE = 34;
const TITLE = 36; // room for the title of the y axis, between key and plot
const PLOT = { width: WIDTH - 2 * SIDE, height: 230 };

/** All treatments of a lot in one plot, under a key that shows each line as it is drawn. */
export function germinationPlot(trial: Trial, courses: readonly Course[], words: Words): TopLevelSpec {
  const days = checkDays(courses);
  const last = Math.max(1, ...days);
  const labelled = axisLabels(days, (day) => (day / last) * PLOT.width, String);
  const key = treatmentKey(trial, courses, words, { x: -SIDE, width: WIDTH });
  const top = key.height + TITLE;
  return {
    ...PLOT,
    padding: { left: SIDE, top, right: SIDE, bottom: 44 },
    params: [
      { name: 'days', value: days },
      { name: 'labelled', value: labelled },
      { name: 'last', value: last },
    ],
    datasets: {
      ...linesOf(trial, courses),
      key: key.lines.map((row) => ({ ...row, y: row.y - top })),
      keyMarks: key.marks.map((row) => ({ ...row, y: row.y - top })),
      title: [{ x: -SIDE, y: -14, text: words.ui['chart.germinated'] }],
      dayTitle: [{ x: PLOT.width / 2, y: PLOT.height + 40, text: words.ui['chart.day'] }],
      ends: endsOf(courses, words),
    },
    layer: LAYERS,
  };
}

const checkDays = (courses: readonly Course[]) =>
  [...new Set(courses.flatMap(({ sowings }) => sowings.flatMap(({ checks }) => checks.map(({ day }) => day))))].sort(
    (a, b) => a - b,
  );

function linesOf(trial: Trial, courses: readonly Course[]) {
  const pooled = courses.map(({ treatment, together }) =>
    stepLine(treatment, together, treatmentStyle(trial, treatment)),
  );
  const sowings = courses.flatMap(({ treatment, sowings: all }) => {
    const { colour } = treatmentStyle(trial, treatment);
    return all.map(({ sowing, leftOut, checks }) =>
      stepLine(sowing.id, checks, { colour, dash: leftOut ? [1, 3] : [1, 0] }),
    );
  });
  return {
    sowings: sowings.flat(),
    treatments: pooled.flat(),
    checks: pooled.flatMap((line) => line.filter(({ day }) => day > 0)),
  };
}

/** The last share of each treatment, written at the end of its line. */
function endsOf(courses: readonly Course[], words: Words) {
  const ends = courses.flatMap(({ together }) => together.at(-1) ?? []);
  const wanted = ends.map((check) => (PLOT.height * (100 - share(check))) / 100);
  const y = keepApart(wanted, SMALL + 1, PLOT.height);
  return ends.map((check, index) => ({
    x: PLOT.width + 9,
    y: y[index],
    text: words.number(Math.round(share(check))),
  }));
}

const x: Encoding['x'] = {
  field: 'day',
  type: 'quantitative',
  scale: { domain: [0, { expr: 'last' }], nice: false },
  axis: {
    values: { expr: 'days' },
    labelExpr: "indexof(labelled, datum.value) < 0 ? '' : datum.label",
  },
};
const y: Encoding['y'] = {
  field: 'share',
  type: 'quantitative',
  scale: { domain: [0, 100] },
  axis: { values: [0, 20, 40, 60, 80, 100], grid: true, ticks: false, labelPadding: 6 },
};
const line: Encoding = {
  x,
  y,
  stroke: raw('colour'),
  strokeDash: raw('dash'),
  detail: { field: 'line', type: 'nominal' },
};
const mark: Encoding = { stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') };
const words: Encoding = { x: place('x'), y: place('y'), text: raw('text') };

const LAYERS: Layers = [
  {
    name: 'sowings',
    data: { name: 'sowings' },
    mark: { type: 'line', interpolate: 'step-after', strokeWidth: 1, strokeOpacity: 0.75 },
    encoding: line,
  },
  {
    name: 'treatments',
    data: { name: 'treatments' },
    mark: { type: 'line', interpolate: 'step-after', strokeWidth: 2.75 },
    encoding: line,
  },
  { name: 'checks', data: { name: 'checks' }, mark: { type: 'point', size: 56 }, encoding: { x, y, ...mark } },
  {
    name: 'ends',
    data: { name: 'ends' },
    mark: { type: 'text', baseline: 'middle', fontWeight: 600 },
    encoding: words,
  },
  {
    name: 'day-title',
    data: { name: 'dayTitle' },
    mark: { type: 'text', fontSize: SMALL, align: 'center' },
    encoding: words,
  },
  { name: 'title', data: { name: 'title' }, mark: { type: 'text', fontSize: SMALL }, encoding: words },
  {
    name: 'key-lines',
    data: { name: 'key' },
    mark: { type: 'rule' },
    encoding: {
      x: place('x'),
      x2: { field: 'x2' },
      y: place('y'),
      stroke: raw('colour'),
      strokeDash: raw('dash'),
      strokeWidth: { field: 'width', type: 'quantitative', scale: null },
    },
  },
  {
    name: 'key-marks',
    data: { name: 'keyMarks' },
    mark: { type: 'point', size: 56 },
    encoding: { x: place('middle'), y: place('y'), ...mark },
  },
  {
    name: 'key',
    data: { name: 'key' },
    mark: { type: 'text', baseline: 'middle' },
    encoding: { ...words, x: place('words') },
  },
];
