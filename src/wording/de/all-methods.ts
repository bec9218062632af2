import { METHOD_IDS } from '../method-ids.ts';
import { METHOD_SOURCES } from '../method-sources.ts';
import type { MethodText } from '../words.ts';
import { METHOD_ENTRIES } from './methods/method-entries.ts';

/** Every method, for the methods page. */
export const allMethods = (): readonly MethodText[] =>
  METHOD_IDS.map((id) => ({ id, ...METHOD_ENTRIES[id], sources: METHOD_SOURCES[id] }));
