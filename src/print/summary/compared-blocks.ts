import type { Block, Figure } from '../document.ts';
import type { About } from './about.ts';
import { shapeOf } from '../pictures/shape-of.ts';
import { SIZES } from '../sizes.ts';
import { answer } from './answer.ts';
import { colophon } from './colophon.ts';
import { howDone } from './how-done.ts';
import { inTwo } from './in-two.ts';
import { limits } from './limits.ts';
import { mind } from './mind.ts';
import { numbers } from './numbers.ts';
import { opening } from './opening.ts';
import type { DrawnChart, SummaryCharts } from './summary-charts.ts';
import type { Room } from './summary-document.ts';
import { trust } from './trust.ts';

/** Width of the column in which a chart of differences stands on the narrower paper, mm. */
const COLUMN = SIZES.sheet.a4[0] - 2 * SIZES.margin.x - SIZES.beside - SIZES.gutter;

/** A chart may be drawn a little smaller to stand in that column. */
const ALMOST = 1.1;

/**
 * What a compared trial says. What limits a sentence stands beside it: the caveats beside the answer, what the trial
 * cannot tell beside the chart; under the caveats where charts of several lots, or tables, need that width.
 */
export function comparedBlocks(about: About, charts: SummaryCharts): (room: Room) => Block[] {
  const { trial, analysis, words } = about;
  const { ui } = words;
  const opened = opening(about);
  const answered = answer(about);
  const limited = { inFull: limits(about, true), byName: limits(about, false) };
  const cannotTell: Block[] = [
    { kind: 'heading', level: 3, text: ui['report.cannotTell'] },
    ...words.cannotTell(trial, analysis).map((text): Block => ({ kind: 'text', style: 'label', text })),
  ];
  const done: Block[] = [
    ...trust(about),
    { kind: 'heading', level: 2, text: ui['print.howDone'] },
    ...inTwo(howDone(about)),
  ];
  const results: Block = { kind: 'heading', level: 2, text: ui['report.results'] };
  const counted = numbers(about);
  const last = [...mind(about), ...colophon(about)];

  return (room) => {
    const differences = charts.differences.filter(({ svg }) => shapeOf(svg) * COLUMN <= room.tallest);
    const courses = room.courses ? charts.courses : [];
    const [only, ...more] = courses;
    const single = only && more.length === 0 ? figureOf(only, room, only.broad ?? room.chart) : null;
    const isNarrow = single !== null && (single.width ?? 0) <= COLUMN * ALMOST;
    const margin = room.packed || !isNarrow ? 'answer' : 'chart';
    const { blocks, broad, complete, leftOut } = counted(room);
    const fewer = charts.undrawn || differences.length + courses.length < charts.differences.length + charts.courses.length; // prettier-ignore
    const tables = [...blocks, ...elsewhere(about, [...leftOut, ...(fewer ? [ui['print.restCharts']] : [])])];
    return [
      ...opened,
      {
        kind: 'spread',
        main: [...answered(room.sentences, complete), ...differences.map((chart) => figureOf(chart, room, null))],
        beside: [...(room.packed ? limited.byName : limited.inFull), ...(margin === 'answer' ? cannotTell : [])],
      },
      ...done,
      ...(margin === 'chart' && single
        ? [{ kind: 'spread', main: [results, single], beside: cannotTell } as const, ...tables]
        : single && !only?.broad && !broad
          ? [results, { kind: 'columns', first: room.chart, columns: [[single], tables] } as const]
          : [...(only ? [results] : []), ...(single ? [single] : inRows(courses, room)), ...tables]),
      ...last,
    ];
  };
}

function figureOf({ name, chart }: DrawnChart, room: Room, width: number | null, titled = false): Figure {
  const { description, subtitle } = chart;
  const title = titled ? chart.title : null;
  return { kind: 'figure', picture: name, alt: description, title, caption: subtitle, width, tallest: room.tallest };
}

/** Charts beside each other in rows, which are filled up so that all charts are of one width; broad ones alone. */
function inRows(courses: readonly DrawnChart[], room: Room): Block[] {
  const figures = courses.map((chart) => figureOf(chart, room, null, courses.length > 1));
  if (courses.some(({ broad }) => broad)) return figures;
  const number = room.packed ? 3 : 2;
  return Array.from({ length: Math.ceil(figures.length / number) }, (_, row) => ({
    kind: 'columns',
    first: null,
    columns: Array.from({ length: number }, (__, column) => figures.slice(row * number + column).slice(0, 1)),
  }));
}

/** What only the report has, and where it is. */
function elsewhere({ words, address }: About, what: readonly string[]): Block[] {
  if (what.length === 0) return [];
  return [{ kind: 'text', style: 'label', text: words.say('print.onlyInReport', { what: words.list(what), address }) }];
}
