import { resolve } from 'node:path';
import { keeper, type Keeper } from './keeper.ts';
import { makerDigest } from './maker-digest.ts';

/** Where things are kept, seen from the folder in which everything runs. */
export const KEPT_IN = 'node_modules/.cache/fairsown';

let ours: Keeper | undefined;

/** Makes everything anew: while `dev` runs the code may change under it, and tests test the making. */
const nothingKept: Pick<Keeper, 'bytes' | 'text'> = {
  bytes: (_kind, _inputs, make) => make(),
  text: (_kind, _inputs, make) => make(),
};

/** While `astro build` runs, and in its threads. */
export const isBuilding = (): boolean => process.env.NODE_ENV === 'production';

/** What a build of the site keeps for the next one. */
export const buildKeeper = (): Pick<Keeper, 'bytes' | 'text'> => (isBuilding() ? projectKeeper() : nothingKept);

/** The same for what lives no longer than its code, such as a command or a thread that reads the content once. */
export const projectKeeper = (): Keeper => (ours ??= keeper(resolve(KEPT_IN), makerDigest(resolve('.'))));
