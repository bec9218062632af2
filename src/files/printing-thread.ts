// What the threads of printing-threads.ts run.
import { digestPdf } from '../print/digest/digest-pdf.ts';
import { summaryPdf } from '../print/summary/summary-pdf.ts';
import { wordsFor } from '../wording/words-for.ts';
import type { KitOrder } from './kept-repeat-kit.ts';
import type { DigestOrder } from './printed-digest.ts';
import type { SummaryOrder } from './printed-summary.ts';
import { repeatKitZip } from './repeat-kit-zip.ts';

export async function summary(order: SummaryOrder): Promise<Uint8Array> {
  const { bytes } = await summaryPdf({ ...order, words: wordsFor(order.site.language) });
  return bytes;
}

export const kit = ({ trial, address, site }: KitOrder): Uint8Array | null => repeatKitZip(trial, address, site);

export function digest({ year, site, trials }: DigestOrder): Uint8Array {
  const words = wordsFor(site.language);
  return digestPdf(
    year,
    trials.map((about) => ({ ...about, site, words })),
    site,
    words,
  ).bytes;
}
