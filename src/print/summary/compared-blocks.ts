import type { Block, Figure } from '../document.ts';
import type { About } from './about.ts';
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
  const [only, ...others] = charts.courses;

  return (room) => {
    const single = only !== undefined && others.length === 0 ? figureOf(only, null, room.chart, room) : null;
    const ofDifferences = charts.differences.map((chart) => figureOf(chart, null, room.chart, room));
    const margin = room.packed || !single ? 'answer' : 'chart';
    return [
      ...opened,
      {
        kind: 'spread',
        main: [...answered(room.sentences), ...ofDifferences],
        beside: [...(room.packed ? limited.byName : limited.inFull), ...(margin === 'answer' ? cannotTell : [])],
      },
      ...done,
      ...(margin === 'chart' && single
        ? [{ kind: 'spread', main: [results, single], beside: cannotTell } as const, ...counted]
        : single
          ? [results, { kind: 'columns', first: room.chart, columns: [[single], counted] } as const]
          : [results, ...abreast(room.packed ? 3 : 2, severalIn(room)), ...counted]),
      ...last,
    ];
  };

  function severalIn(room: Room): Figure[] {
    return charts.courses.map((chart) => figureOf(chart, chart.chart.title, null, room));
  }

  function figureOf({ name, chart }: DrawnChart, title: string | null, width: number | null, room: Room): Figure {
    const { description, subtitle } = chart;
    return { kind: 'figure', picture: name, alt: description, title, caption: subtitle, width, tallest: room.tallest };
  }
}

/** Figures in rows; the last row is filled up, so that all are of one width. */
function abreast(number: number, figures: readonly Figure[]): Block[] {
  return Array.from({ length: Math.ceil(figures.length / number) }, (_, row) => ({
    kind: 'columns',
    first: null,
    columns: Array.from({ length: number }, (__, column) => figures.slice(row * number + column).slice(0, 1)),
  }));
}
