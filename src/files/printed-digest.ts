import type { Season } from '../print/digest/digest-pdf.ts';
import type { Site } from '../trial/trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { printed } from './printed.ts';

/** What a booklet is made from. */
export interface DigestOrder {
  readonly season: Season;
  readonly site: Site;
  /** With the address of each report; `file` as `analysedTrial` takes it. */
  readonly trials: readonly { readonly id: string; readonly file: string; readonly address: string }[];
}

/** A booklet, as kept from an earlier build or set in a thread of its own. */
export function printedDigest(order: DigestOrder): Promise<Uint8Array> {
  const { season, site, trials } = order;
  const inputs = JSON.stringify([season, digestOf(site), trials]);
  return buildKeeper().bytes('digest', inputs, () => printed('digest', order));
}
