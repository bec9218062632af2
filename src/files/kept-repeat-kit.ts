import type { Site, Trial } from '../trial/trial.ts';
import { buildKeeper, isBuilding } from './kept/build-keeper.ts';
import { printed } from './printed.ts';
import { repeatKitZip } from './repeat-kit-zip.ts';

export interface KitOrder {
  /** As it may be told (toldTrial). */
  readonly trial: Trial;
  /** Of the original report. */
  readonly address: string;
  readonly site: Site;
}

/** `repeatKitZip` as kept from an earlier build, or made in a thread of its own while the site is built. */
export async function keptRepeatKit({ trial, address, site }: KitOrder): Promise<Uint8Array | null> {
  if (!isBuilding()) return repeatKitZip(trial, address, site);
  const order = { trial, address, site };
  const zip = await buildKeeper().bytes(
    'kit',
    JSON.stringify(order),
    async () => (await printed('kit', order)) ?? new Uint8Array(), // no kit yet
  );
  return zip.length === 0 ? null : zip;
}
