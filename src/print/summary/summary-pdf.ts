import { setImmediate } from 'node:timers/promises';
import { pdfOf, type Pdf } from '../pdf-of.ts';
import type { About } from './about.ts';
import { summaryCharts } from './summary-charts.ts';
import { summaryDocument, type Room } from './summary-document.ts';

const ALL = { others: true, courses: true, rows: Infinity, tallest: 190, packed: false } as const;
const ROOMY: Room = { ...ALL, density: 'roomy', sentences: 4, chart: 104 };
const CLOSE: Room = { ...ALL, density: 'close', sentences: 4, chart: 96 };
const TIGHT: Room = { ...ALL, density: 'tight', sentences: 3, chart: 84 };
const PACKED: Room = { ...TIGHT, chart: 72, tallest: 150, packed: true };
const TERSE: Room = { ...PACKED, sentences: 2 };
/** From here on something is left to the report, and the summary says what: the least needed first. */
const PRIMARY: Room = { ...TERSE, others: false };
const CHARTLESS: Room = { ...PRIMARY, courses: false, tallest: ALL.tallest };
const BRIEF: Room = { ...CHARTLESS, sentences: 1 };
const ROWS = [48, 36, 24, 12].map((rows): Room => ({ ...BRIEF, rows }));
const LEAST: Room = { ...BRIEF, rows: 12, tallest: 0 };
const ROOMS: readonly Room[] = [CLOSE, TIGHT, PACKED, TERSE, PRIMARY, CHARTLESS, BRIEF, ...ROWS, LEAST];

/**
 * The printable summary of a trial: two pages (a trial that is not compared: one, where it fits) as PDF/UA-1, the
 * same bytes for the same data. The roomiest setting that fits is used; where several findings are told, the first is
 * never tried. What two pages cannot hold stays in the report, and the summary says so.
 */
export async function summaryPdf(about: About): Promise<Pdf> {
  const { trial, analysis, words } = about;
  const charts = await summaryCharts(about);
  const documentIn = summaryDocument(about, charts);
  const first = words.inShort(trial, analysis).length > 1 ? [] : [documentIn(ROOMY)];
  await setImmediate(); // Typst's earlier documents are freed in Node's own turn; without one they would pile up
  return pdfOf([...first, ...ROOMS.map(documentIn)], analysis.results.length > 0 ? 2 : 1);
}
