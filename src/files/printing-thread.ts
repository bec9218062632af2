// What the thread of printed-summary.ts runs.
import { summaryPdf } from '../print/summary/summary-pdf.ts';
import { wordsFor } from '../wording/words-for.ts';
import type { SummaryOrder } from './printed-summary.ts';

export default async function print(order: SummaryOrder): Promise<Uint8Array> {
  const { bytes } = await summaryPdf({ ...order, words: wordsFor(order.site.language) });
  return bytes;
}
