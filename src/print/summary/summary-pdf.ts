import { setImmediate } from 'node:timers/promises';
import { pdfOf, type Pdf } from '../pdf-of.ts';
import type { About } from './about.ts';
import { summaryCharts } from './summary-charts.ts';
import { summaryDocument, type Room } from './summary-document.ts';

const ROOMY: Room = { density: 'roomy', sentences: 4, chart: 104, tallest: 190, packed: false };
const CLOSE: Room = { density: 'close', sentences: 4, chart: 96, tallest: 190, packed: false };
const TIGHT: Room = { density: 'tight', sentences: 3, chart: 84, tallest: 190, packed: false };
const PACKED: Room = { density: 'tight', sentences: 3, chart: 72, tallest: 150, packed: true };

/**
 * The printable summary of a trial: two pages (a trial that is not compared: one, where it fits) as PDF/UA-1, the
 * same bytes for the same data. The roomiest setting that fits is used; where several findings are told, the first is
 * never tried. A trial with so many comparisons that two pages cannot hold them takes more; nothing is left
 * out of its tables.
 */
export async function summaryPdf(about: About): Promise<Pdf> {
  const { trial, analysis, words } = about;
  const charts = await summaryCharts(about);
  const [first, ...tighter] = words.inShort(trial, analysis).length > 1 ? [CLOSE, TIGHT, PACKED] : [ROOMY, CLOSE, TIGHT, PACKED]; // prettier-ignore
  const documentIn = summaryDocument(about, charts);
  await setImmediate(); // Typst's earlier documents are freed in Node's own turn; without one they would pile up
  return pdfOf([documentIn(first ?? PACKED), ...tighter.map(documentIn)], analysis.results.length > 0 ? 2 : 1);
}
