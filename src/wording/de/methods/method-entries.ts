import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';
import { means } from './means.ts';
import { pooling } from './pooling.ts';
import { shares } from './shares.ts';
import { storage } from './storage.ts';
import { sureness } from './sureness.ts';

/** Every method by its id. */
export const METHOD_ENTRIES: Readonly<Record<MethodId, MethodEntry>> = {
  ...shares,
  ...means,
  ...storage,
  ...sureness,
  ...pooling,
};
