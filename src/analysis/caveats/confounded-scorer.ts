import type { Sowing } from '../../trial/trial.ts';
import { apartPairs } from './apart-pairs.ts';
import { checksOf, dayOf } from './checks-of.ts';
import { makeCaveat } from './make-caveat.ts';
import { isAboutCounts, isGermination } from './measures.ts';
import type { Pair } from './pair.ts';
import type { Rule } from './rule.ts';

/** The treatments were counted by different people: on the outcome's day or, for speed, at any check. */
export const confoundedScorer: Rule = (trial, results) => {
  const scorersOf = (pair: Pair) => (sowing: Sowing) => {
    const checks = checksOf(trial, sowing.id, dayOf(pair.result, sowing.lot));
    const scored = isGermination(pair.result) ? checks.slice(-1) : checks;
    const scorers = [...new Set(scored.map(({ scorer }) => scorer))];
    return scorers.every((scorer) => scorer !== null) ? scorers : [];
  };
  return apartPairs(trial, results.filter(isAboutCounts), (pair) => ({
    treated: pair.treated.sowings.map(scorersOf(pair)),
    control: pair.control.sowings.map(scorersOf(pair)),
  })).map(({ pair, evidence }) => makeCaveat('confounded-scorer', pair.about, evidence));
};
