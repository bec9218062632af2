import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';
import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';

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

let threads: Piscina<SummaryOrder, Uint8Array> | undefined;

/**
 * The printable summary of a trial, as kept from an earlier build or set in a thread of its own: pages are written
 * meanwhile.
 */
export function printedSummary(order: SummaryOrder): Promise<Uint8Array> {
  return buildKeeper().bytes('summary', JSON.stringify(order), async () => {
    threads ??= new Piscina({
      filename: pathToFileURL(resolve('src/files/printing-thread.ts')).href,
      minThreads: 1,
      maxThreads: Math.max(1, availableParallelism() - 1),
      idleTimeout: 1000,
    });
    return threads.run(order);
  });
}
