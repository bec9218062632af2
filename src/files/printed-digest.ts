import type { Site } from '../trial/trial.ts';
import type { AnalysedTrial } from './analysed-trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { printed } from './printed.ts';

/** What the booklet of a season is made from. */
export interface DigestOrder {
  readonly year: string;
  readonly site: Site;
  /** With the address of each report. */
  readonly trials: readonly (AnalysedTrial & { readonly address: string })[];
}

/** The booklet of a season, as kept from an earlier build or set in a thread of its own. */
export function printedDigest(order: DigestOrder): Promise<Uint8Array> {
  const { year, site, trials } = order;
  const inputs = trials.map(({ trial, analysis, address }) => [digestOf(trial), digestOf(analysis), address]);
  return buildKeeper().bytes('digest', JSON.stringify([year, digestOf(site), inputs]), () => printed('digest', order));
}
