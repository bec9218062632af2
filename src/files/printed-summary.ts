import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { printed } from './printed.ts';

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

/**
 * The printable summary of a trial, as kept from an earlier build or set in a thread of its own: pages are written
 * meanwhile.
 */
export function printedSummary(order: SummaryOrder): Promise<Uint8Array> {
  const { trial, analysis, site, ...rest } = order;
  const inputs = JSON.stringify([[trial, analysis, site].map(digestOf), rest]);
  return buildKeeper().bytes('summary', inputs, () => printed('summary', order));
}
