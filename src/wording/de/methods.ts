import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { methodIds } from '../method-ids.ts';
import { METHOD_SOURCES } from '../method-sources.ts';
import type { MethodText } from '../words.ts';
import { applied } from './methods/applied.ts';
import { METHOD_ENTRIES } from './methods/method-entries.ts';

/** What was actually applied to a trial: each method in a sentence, then its numbers here. */
export const methods = (trial: Trial, analysis: Analysis): readonly MethodText[] =>
  methodIds(analysis).map((id) => {
    const entry = METHOD_ENTRIES[id];
    const plain = [...entry.plain.slice(0, 1), ...applied(id, trial, analysis)];
    return { id, ...entry, plain, sources: METHOD_SOURCES[id] };
  });
