// What the threads of printing-threads.ts run.
import type { Analysis } from '../analysis/analysis.ts';
import { digestPdf } from '../print/digest/digest-pdf.ts';
import { summaryPdf } from '../print/summary/summary-pdf.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { wordsFor } from '../wording/words-for.ts';
import { analysedTrial } from './analysed-trial.ts';
import type { KitOrder } from './kept-repeat-kit.ts';
import type { DigestOrder } from './printed-digest.ts';
import { repeatKitZip } from './repeat-kit-zip.ts';

/** What a summary is made from. */
export interface SummaryOrder {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly site: Site;
  /** Of the report. */
  readonly address: string;
  /** Titles of trials of the same question by others. */
  readonly repeatedBy: readonly string[];
}

export async function summary(order: SummaryOrder): Promise<Uint8Array> {
  const { bytes } = await summaryPdf({ ...order, words: wordsFor(order.site.language) });
  return bytes;
}

export const kit = ({ trial, address, site }: KitOrder): Uint8Array | null => repeatKitZip(trial, address, site);

export function digest({ season, site, trials }: DigestOrder): Uint8Array {
  const words = wordsFor(site.language);
  return digestPdf(
    season,
    trials.map(({ id, file, address }) => ({ ...analysedTrial(id, file), address, site, words })),
    site,
    words,
  ).bytes;
}
