import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** No smallest difference that matters was given, so "alike" can never be said. */
export const noMargin: Rule = (_, results) =>
  results
    .filter(({ comparisons, matters }) => comparisons.length > 0 && matters === null)
    .map(({ outcome, unit }) => makeCaveat('no-margin', { outcome }, { unit }));
