import { apartPairs } from './apart-pairs.ts';
import { makeCaveat } from './make-caveat.ts';
import { placesOf } from './places-of.ts';
import type { Rule } from './rule.ts';

/** The treatments stood in different places (positions given as text, "lower shelf"), none shared. */
export const confoundedPlace: Rule = (trial, results) =>
  apartPairs(trial, results, ({ treated, control }) => {
    const places = placesOf(treated.sowings, control.sowings).find(({ kind }) => kind === 'place');
    const values = (side: 'treated' | 'control') =>
      places?.[side].map(({ place }) => (place === null ? [] : [place])) ?? [];
    return { treated: values('treated'), control: values('control') };
  }).map(({ pair, evidence }) => makeCaveat('confounded-place', pair.about, evidence));
