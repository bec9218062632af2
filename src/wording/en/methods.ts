import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { METHOD_IDS, methodIds } from '../method-ids.ts';
import type { MethodText } from '../words.ts';
import { applied } from './methods/applied.ts';
import { means } from './methods/means.ts';
import { shares } from './methods/shares.ts';
import { sureness } from './methods/sureness.ts';

const ALL = { ...shares, ...means, ...sureness };

/** What was actually applied to a trial: each method in a sentence, then its numbers here. */
export const methods = (trial: Trial, analysis: Analysis): readonly MethodText[] =>
  methodIds(analysis).map((id) => {
    const entry = ALL[id];
    return { id, ...entry, plain: [...entry.plain.slice(0, 1), ...applied(id, trial, analysis)] };
  });

/** Every method, for the methods page. */
export const allMethods = (): readonly MethodText[] => METHOD_IDS.map((id) => ({ id, ...ALL[id] }));
