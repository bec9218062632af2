import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import { placesOf, type Placed } from './places-of.ts';
import type { Rule } from './rule.ts';
import { separation } from './separation.ts';
import { unevenPlaces } from './uneven-places.ts';

/**
 * The treatments stood in different rows, or in different columns, of a grid of positions such as `2-3`. Where
 * positions were drawn at random it counts only if fewer than one draw in twenty turns out so: two trays of
 * each in two rows of two do so in a third of draws, and that luck is in the interval already.
 */
export const confoundedPosition: Rule = (trial, results) =>
  layoutPairs(trial, results)
    .filter(({ single }) => !single)
    .flatMap(({ about, treated, control }) =>
      placesOf(treated.sowings, control.sowings).flatMap((places) => {
        if (places.kind === 'place') return [];
        const values = separation(places.treated.map(placeOf), places.control.map(placeOf));
        const chance = unevenPlaces(trial, places.treated, places.control)?.chance ?? null;
        if (values === null || (chance !== null && chance >= RARE)) return [];
        const sides = { treatment: treated.treatment, control: control.treatment };
        return [makeCaveat('confounded-position', about, { ...sides, values, by: places.kind })];
      }),
    );

const RARE = 0.05;

const placeOf = ({ place }: Placed): string[] => (place === null ? [] : [place]);
