import type { Site } from '../trial/trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { printed } from './printed.ts';

/** What the booklet of a season is made from. */
export interface DigestOrder {
  readonly year: string;
  readonly site: Site;
  /** With the address of each report; `file` as `analysedTrial` takes it. */
  readonly trials: readonly { readonly id: string; readonly file: string; readonly address: string }[];
}

/** The booklet of a season, as kept from an earlier build or set in a thread of its own. */
export function printedDigest(order: DigestOrder): Promise<Uint8Array> {
  const { year, site, trials } = order;
  return buildKeeper().bytes('digest', JSON.stringify([year, digestOf(site), trials]), () => printed('digest', order));
}
