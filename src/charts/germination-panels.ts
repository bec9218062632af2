import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { LEADING, PALE, SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';
import { checkDays, type Course } from './germination-course.ts';
import { keepApart } from './keep-apart.ts';
import { risers, share, shareText, stepLine, treads } from './step-line.ts';
import { KEY_LAYERS, LEFT_OUT_DASH, THIN, treatmentKey } from './treatment-key.ts';
import { treatmentStyle } from './treatment-style.ts';

const LEFT = 32;
const END = 36; // room for the last shares at the end of the lines
const PLOT = { width: (WIDTH - 1.5 * LEFT) / 2 - END, height: 104 };
const TITLE = 2 * LEADING + 6;
const STEP = TITLE + PLOT.height + 30;

/** One small plot: what it shows, and where a day and a share stand in the drawing. */
interface Panel {
  readonly course: Course;
  readonly left: number;
  readonly top: number;
  x(day: number): number;
  y(percent: number): number;
}

/** A small plot for each treatment, with the control in each: for more treatments than one plot can keep apart. */
export function germinationPanels(trial: Trial, courses: readonly Course[], words: Words): TopLevelSpec {
  const days = checkDays(courses);
  const last = Math.max(1, ...days);
  const controls = new Set(trial.treatments.flatMap(({ id, control }) => (control ? [id] : [])));
  const control = courses.filter(({ treatment }) => controls.has(treatment));
  const key = treatmentKey(trial, control, words, { x: -LEFT, width: WIDTH });
  const panels = courses
    .filter(({ treatment }) => !controls.has(treatment))
    .map((course, index): Panel => {
      const left = (index % 2) * (PLOT.width + END + LEFT / 2);
      const top = Math.floor(index / 2) * STEP + TITLE;
      const y = (percent: number) => top + (1 - percent / 100) * PLOT.height;
      return { course, left, top, x: (day) => left + (day / last) * PLOT.width, y };
    });
  const top = key.height + 2 * LEADING;
  return {
    width: WIDTH - LEFT - END,
    height: Math.ceil(panels.length / 2) * STEP,
    padding: { left: LEFT, top, right: END, bottom: LEADING },
    datasets: {
      key: key.rows.map((row) => ({ ...row, y: row.y - top })),
      keyLeftOut: key.leftOut.map((row) => ({ ...row, y: row.y - top })),
      sowings: panels.flatMap((panel) => sowingsOf(trial, panel)),
      ...linesOf(trial, panels, control),
      ...wordsOf(trial, panels, control, days, words),
    },
    layer: LAYERS,
  };
}

function sowingsOf(trial: Trial, { course, x, y }: Panel) {
  const { colour } = treatmentStyle(trial, course.treatment);
  return course.sowings.flatMap(({ sowing, leftOut, checks }) =>
    stepLine(sowing.id, checks, { colour, dash: leftOut ? LEFT_OUT_DASH : [1, 0] }).map((corner) => ({
      ...corner,
      x: x(corner.day),
      y: y(corner.share),
    })),
  );
}

function linesOf(trial: Trial, panels: readonly Panel[], control: readonly Course[]) {
  const lines = panels.flatMap(({ course, x, y }) =>
    [...control, course].map(({ treatment, together }) => ({ look: treatmentStyle(trial, treatment), together, x, y })),
  );
  return {
    risers: lines.flatMap(({ together, look, x, y }) =>
      risers(together, look).map((part) => ({ ...part, x: x(part.day), y: y(part.from), y2: y(part.share) })),
    ),
    treads: lines.flatMap(({ together, look, x, y }) =>
      treads(together, look).map((part) => ({ ...part, x: x(part.day), x2: x(part.until), y: y(part.share) })),
    ),
    checks: lines.flatMap(({ together, look, x, y }) =>
      together.map((check) => ({ ...look, x: x(check.day), y: y(share(check)) })),
    ),
  };
}

function wordsOf(
  trial: Trial,
  panels: readonly Panel[],
  control: readonly Course[],
  days: readonly number[],
  words: Words,
) {
  return {
    grid: panels.flatMap(({ left, y }) => GRID.map((percent) => ({ x: left, x2: left + PLOT.width, y: y(percent) }))),
    shares: panels.flatMap(({ left, y }) =>
      left > 0 ? [] : GRID.map((percent) => ({ x: left - 6, y: y(percent), text: words.number(percent) })),
    ),
    days: panels.flatMap(({ x, y }) =>
      axisLabels(days, x, words.number).map((day) => ({ x: x(day), y: y(0) + LEADING, text: words.number(day) })),
    ),
    titles: panels.flatMap(({ course, left, top }) => {
      const lines = fitText(words.treatmentLabel(trial, course.treatment), PLOT.width + END, SMALL, 2);
      return lines.map((text, index) => ({ x: left, y: top - 11 - (lines.length - 1 - index) * LEADING, text }));
    }),
    ends: panels.flatMap(({ course, top, x, y }) => {
      const ends = [...control, course].flatMap(({ together }) => together.at(-1) ?? []);
      const places = keepApart(
        ends.map((check) => y(share(check)) - top),
        SMALL,
        PLOT.height,
      );
      return ends.map((check, index) => ({
        x: x(check.day) + 7,
        y: top + (places[index] ?? 0),
        text: shareText(check, words),
      }));
    }),
    axes: [
      { x: -LEFT, y: -LEADING, text: words.ui['chart.germinated'] },
      { x: 0, y: Math.ceil(panels.length / 2) * STEP + 6, text: words.ui['chart.day'] },
    ],
  };
}

const GRID = [0, 50, 100];
const x = place('x');
const y = place('y');
const line: Encoding = { stroke: raw('colour'), strokeDash: raw('dash') };
const text: Encoding = { x, y, text: raw('text') };

const LAYERS: Layers = [
  {
    name: 'grid',
    data: { name: 'grid' },
    mark: { type: 'rule', opacity: PALE },
    encoding: { x, x2: { field: 'x2' }, y },
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
    encoding: { x, y, y2: { field: 'y2' }, stroke: raw('colour') },
  },
  {
    name: 'treads',
    data: { name: 'treads' },
    mark: { type: 'rule', strokeWidth: 2.25 },
    encoding: { x, x2: { field: 'x2' }, y, ...line },
  },
  {
    name: 'checks',
    data: { name: 'checks' },
    mark: { type: 'point', size: 32, strokeWidth: 1.5 },
    encoding: { x, y, stroke: raw('colour'), fill: raw('fill'), shape: raw('shape') },
  },
  {
    name: 'titles',
    data: { name: 'titles' },
    mark: { type: 'text', fontSize: SMALL, fontWeight: 600 },
    encoding: text,
  },
  { name: 'axes', data: { name: 'axes' }, mark: { type: 'text', fontSize: SMALL }, encoding: text },
  { name: 'ends', data: { name: 'ends' }, mark: { type: 'text', fontSize: SMALL, baseline: 'middle' }, encoding: text },
  {
    name: 'shares',
    data: { name: 'shares' },
    mark: { type: 'text', fontSize: SMALL, align: 'right', baseline: 'middle' },
    encoding: text,
  },
  { name: 'days', data: { name: 'days' }, mark: { type: 'text', fontSize: SMALL, align: 'center' }, encoding: text },
  ...KEY_LAYERS,
];
