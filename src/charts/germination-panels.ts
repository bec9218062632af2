import type { TopLevelSpec } from 'vega-lite';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { axisLabels } from './axis-labels.ts';
import { LEADING, PALE, SMALL, WIDTH } from './chart-theme.ts';
import { place, raw, type Encoding, type Layers } from './encoding.ts';
import { fitText } from './fit-text.ts';
import { checkDays, type Course } from './germination-course.ts';
import { keepApart } from './keep-apart.ts';
import { NARROW, WIDE, type RowRoom } from './row-layout.ts';
import { risers, share, shareText, stepLine, treads } from './step-line.ts';
import { KEY_LAYERS, LEFT_OUT_DASH, THIN, treatmentKey } from './treatment-key.ts';
import { treatmentStyle } from './treatment-style.ts';

const LEFT = 32;
const END = 36; // room for the last shares at the end of the lines
const BETWEEN = LEFT / 2;
const BELOW = 30; // room for the days, and free room above the next title
const PLOT = (WIDTH - LEFT - BETWEEN) / 2 - END; // width of one plot, of which two stand abreast on a phone

/** Plots abreast, and the height of one: on a phone, and, where they are more than that, across a sheet of paper. */
const ON_PHONE = { abreast: 2, high: 100 } as const;
const onSheet = (plots: number) => ({ abreast: Math.min(4, plots), high: plots > 4 ? 76 : 104 });

/** What one small plot shows. */
export interface PanelContent {
  readonly title: string;
  /** Drawn thick, all sowings of a treatment together. */
  readonly thick: readonly Course[];
  /** Those whose sowings are drawn thin. */
  readonly thin: readonly Course[];
  /** The day that is compared, where it is not the last; dotted. */
  readonly counted: number | null;
}

/** Where it stands: a day and a share in the drawing. */
interface Panel extends PanelContent {
  readonly left: number;
  readonly top: number;
  readonly high: number;
  x(day: number): number;
  y(percent: number): number;
}

/**
 * Small plots side by side, all to one scale: one for each lot, or for each treatment with the control in it.
 *
 * @param explained courses whose lines the key shows, one a treatment
 * @param room `WIDE` for paper, where up to four stand abreast
 */
export function germinationPanels(
  trial: Trial,
  contents: readonly PanelContent[],
  explained: readonly Course[],
  words: Words,
  room: RowRoom = NARROW,
): TopLevelSpec {
  const { abreast, high } = room === WIDE && contents.length > ON_PHONE.abreast ? onSheet(contents.length) : ON_PHONE;
  const width = LEFT + abreast * (PLOT + END) + (abreast - 1) * BETWEEN;
  const above = Math.max(...contents.map(({ title }) => titleLines(title).length)) * LEADING + 6;
  const step = above + high + BELOW;
  const last = Math.max(1, ...contents.flatMap(({ thick }) => checkDays(thick)));
  const key = treatmentKey(trial, explained, words, { x: -LEFT, width });
  const panels = contents.map((content, index): Panel => {
    const left = (index % abreast) * (PLOT + END + BETWEEN);
    const top = Math.floor(index / abreast) * step + above;
    const y = (percent: number) => top + (1 - percent / 100) * high;
    return { ...content, left, top, high, x: (day) => left + (day / last) * PLOT, y };
  });
  const top = key.height + 2 * LEADING;
  const height = Math.ceil(panels.length / abreast) * step;
  return {
    width: width - LEFT - END,
    height,
    padding: { left: LEFT, top, right: END, bottom: LEADING },
    datasets: {
      key: key.rows.map((row) => ({ ...row, y: row.y - top })),
      keyLeftOut: key.leftOut.map((row) => ({ ...row, y: row.y - top })),
      sowings: panels.flatMap((panel) => sowingsOf(trial, panel)),
      ...linesOf(trial, panels),
      ...wordsOf(panels, height, words),
    },
    layer: LAYERS,
  };
}

function sowingsOf(trial: Trial, { thin, x, y }: Panel) {
  return thin.flatMap(({ treatment, sowings }) => {
    const { colour } = treatmentStyle(trial, treatment);
    return sowings.flatMap(({ sowing, leftOut, checks }) =>
      stepLine(sowing.id, checks, { colour, dash: leftOut ? LEFT_OUT_DASH : [1, 0] }).map((corner) => ({
        ...corner,
        x: x(corner.day),
        y: y(corner.share),
      })),
    );
  });
}

function linesOf(trial: Trial, panels: readonly Panel[]) {
  const lines = panels.flatMap(({ thick, x, y }) =>
    thick.map(({ treatment, together }) => ({ look: treatmentStyle(trial, treatment), together, x, y })),
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

function wordsOf(panels: readonly Panel[], height: number, words: Words) {
  const counted = panels.flatMap(({ counted: day, x, y }) =>
    day === null ? [] : [{ day, x: x(day), y: y(0), y2: y(100) }],
  );
  return {
    counted: counted.map(({ x, y, y2 }) => ({ x, y, y2 })),
    grid: panels.flatMap(({ left, y }) => GRID.map((percent) => ({ x: left, x2: left + PLOT, y: y(percent) }))),
    shares: panels.flatMap(({ left, y }) =>
      left > 0 ? [] : GRID.map((percent) => ({ x: left - 6, y: y(percent), text: words.number(percent) })),
    ),
    days: panels.flatMap(({ thick, x, y }) =>
      axisLabels(checkDays(thick), x, words.number).map((day) => ({
        x: x(day),
        y: y(0) + LEADING,
        text: words.number(day),
      })),
    ),
    titles: panels.flatMap(({ title, left, top }) => {
      const lines = titleLines(title);
      return lines.map((text, index) => ({ x: left, y: top - 11 - (lines.length - 1 - index) * LEADING, text }));
    }),
    ends: panels.flatMap(({ thick, top, high, x, y }) => {
      const ends = thick.flatMap(({ together }) => together.at(-1) ?? []);
      const places = keepApart(
        ends.map((check) => y(share(check)) - top),
        SMALL,
        high,
      );
      return ends.map((check, index) => ({
        x: x(check.day) + 7,
        y: top + (places[index] ?? 0),
        text: shareText(check, words),
      }));
    }),
    axes: [
      { x: -LEFT, y: -LEADING, text: words.ui['chart.germinated'] },
      { x: 0, y: height + 6, text: dayTitle(counted, words) },
    ],
  };
}

const titleLines = (title: string) => fitText(title, PLOT + END, SMALL, 2);

function dayTitle(counted: readonly { readonly day: number }[], words: Words): string {
  const [day, ...others] = [...new Set(counted.map((mark) => mark.day))];
  if (day === undefined) return words.ui['chart.day'];
  return others.length > 0
    ? words.ui['chart.daysCompared']
    : words.say('chart.dayCompared', { day: words.number(day) });
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
    name: 'counted',
    data: { name: 'counted' },
    mark: { type: 'rule', strokeDash: [1, 4] },
    encoding: { x, y, y2: { field: 'y2' } },
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
