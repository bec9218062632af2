import { pdfOf, type Pdf } from '../pdf-of.ts';
import type { About } from './about.ts';
import { summaryCharts } from './summary-charts.ts';
import { summaryDocument, type Room } from './summary-document.ts';

const ROOMY: Room = { density: 'roomy', sentences: 4, chart: 104, tallest: 190, packed: false };
const TIGHTER: readonly Room[] = [
  { density: 'close', sentences: 4, chart: 96, tallest: 190, packed: false },
  { density: 'tight', sentences: 3, chart: 84, tallest: 190, packed: false },
  { density: 'tight', sentences: 3, chart: 72, tallest: 150, packed: true },
];

/**
 * The printable summary of a trial: two pages (a trial that is not compared: one, where it fits) as PDF/UA-1, the
 * same bytes for the same data. The roomiest setting that fits is used. A trial with so many comparisons that two
 * pages cannot hold them takes more; nothing is left out of its tables.
 */
export async function summaryPdf(about: About): Promise<Pdf> {
  const charts = await summaryCharts(about);
  const documentIn = (room: Room) => summaryDocument(about, charts, room);
  return pdfOf([documentIn(ROOMY), ...TIGHTER.map(documentIn)], about.analysis.results.length > 0 ? 2 : 1);
}
