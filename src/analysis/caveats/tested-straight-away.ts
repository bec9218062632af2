import { makeCaveat } from './make-caveat.ts';
import { hasComparisons } from './measures.ts';
import type { Rule } from './rule.ts';

/**
 * The question is about storage (trial.yaml says so, or the question speaks of storing or keeping) and no time of
 * storage is recorded: neither `stored` of a sowing nor a start of storage before sowing.
 */
export const testedStraightAway: Rule = (trial, results) => {
  const { started } = trial.storage ?? { started: null };
  const wasStored =
    trial.sowings.some(({ stored }) => (stored ?? 0) > 0) ||
    (started !== null && trial.sowings.some(({ sown }) => sown !== null && sown > started));
  const because = trial.varies === 'storage' ? 'varies' : SPEAKS_OF_STORAGE.test(trial.question) ? 'question' : null;
  const isSilent = because === null || wasStored || !hasComparisons(results);
  return isSilent ? [] : [makeCaveat('tested-straight-away', {}, { because })];
};

const SPEAKS_OF_STORAGE =
  /\b(stored|storing|storage|shelf[- ]life|longevity|seeds? keeps?|seeds? kept|(keep|keeps|keeping|kept) ([a-z]+ )?seeds?)\b/i;
