import type { Density, PrintDocument } from '../document.ts';
import { pageOf } from '../page-of.ts';
import { qrSvg } from '../pictures/qr-svg.ts';
import { verdictMarks } from '../pictures/verdict-marks.ts';
import type { About } from './about.ts';
import { comparedBlocks } from './compared-blocks.ts';
import { growingBlocks } from './growing-blocks.ts';
import type { SummaryCharts } from './summary-charts.ts';

/** How much is said in sentences, and how closely it is set. */
export interface Room {
  readonly density: Density;
  /** Findings in sentences; the others stand in the table of comparisons only. */
  readonly sentences: number;
  /** Width of a chart that stands alone, mm. */
  readonly chart: number;
  /** Most height of a chart, mm. */
  readonly tallest: number;
  /** Caveats by name only, three charts in a row, tables beside a single chart. */
  readonly packed: boolean;
  /** Comparisons of the outcomes that the answer is not about. */
  readonly others: boolean;
  /** Charts of each lot. */
  readonly courses: boolean;
  /** Most rows of numbers. */
  readonly rows: number;
}

/**
 * The summary of a trial, in the order of its page; a trial that is not compared shows its plan and its counts. Found
 * and worded once, it can be laid out for any room.
 */
export function summaryDocument(about: About, charts: SummaryCharts): (room: Room) => PrintDocument {
  const { trial, analysis, site, words, address } = about;
  const pictures = {
    ...verdictMarks(),
    ...Object.fromEntries([...charts.differences, ...charts.courses].map(({ name, svg }) => [name, svg])),
    qr: qrSvg(address),
  };
  const blocksIn = analysis.results.length > 0 ? comparedBlocks(about, charts) : growingBlocks(about);
  return (room) => ({
    title: `${trial.title}: ${words.ui['print.summary']}`,
    language: words.language,
    authors: trial.authors.map(({ name }) => name),
    date: trial.finished ?? trial.sown ?? trial.plan?.fixed ?? null,
    paper: site.paper,
    turned: false,
    density: room.density,
    head: [site.name, words.ui['print.summary']],
    foot: address,
    pageOf: pageOf(words),
    pictures,
    blocks: blocksIn(room),
  });
}
