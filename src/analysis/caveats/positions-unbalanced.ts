import { makeCaveat } from './make-caveat.ts';
import { layoutPairs } from './pairs-of.ts';
import { placesOf } from './places-of.ts';
import type { Rule } from './rule.ts';
import { unevenPlaces } from './uneven-places.ts';

/**
 * More than half of a treatment's trays would have to change place (text, row or column) for both treatments
 * to be spread alike, yet they share some. Where places were drawn at random, only if fewer than one draw
 * in twenty is as uneven: else chance would trip it in trials that did everything right.
 */
export const positionsUnbalanced: Rule = (trial, results) =>
  layoutPairs(trial, results)
    .filter(({ single }) => !single)
    .flatMap(({ about, treated, control }) =>
      placesOf(treated.sowings, control.sowings).flatMap(({ kind, ...sides }) => {
        const uneven = unevenPlaces(trial, sides.treated, sides.control);
        if (uneven === null) return [];
        const { unevenness, places, chance } = uneven;
        const isUnbalanced = unevenness > 0.5 && unevenness < 1 && (chance === null || chance < 0.05);
        const names = { treatment: treated.treatment, control: control.treatment };
        return isUnbalanced ? [makeCaveat('positions-unbalanced', about, { ...names, by: kind, places, chance })] : [];
      }),
    );
