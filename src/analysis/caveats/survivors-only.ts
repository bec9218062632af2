import { measurementsBySowing } from '../measurements-by-sowing.ts';
import { enteredOf } from './entered-of.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** Plants were measured one by one, and only those that came up could be: fewer than were sown. */
export const survivorsOnly: Rule = (trial, results) =>
  results
    .filter(({ measure }) => measure === 'trait')
    .flatMap((result) =>
      trial.lots.flatMap(({ id: lot }) => {
        const groups = result.groups
          .filter((group) => group.lot === lot)
          .flatMap((group) => {
            const entered = enteredOf(trial, result, group);
            const measured = entered.flatMap(({ id }) => measurementsBySowing(trial).get(id) ?? []);
            const oneByOne = measured.some(({ plant }) => plant !== null);
            const isKnown = oneByOne && group.plants !== null && entered.every(({ seeds }) => seeds !== null);
            const seeds = entered.reduce((sum, sowing) => sum + (sowing.seeds ?? 0), 0);
            return isKnown ? [{ treatment: group.treatment, plants: group.plants ?? 0, seeds }] : [];
          });
        const isPart = groups.some(({ plants, seeds }) => plants < seeds);
        return isPart ? [makeCaveat('survivors-only', { outcome: result.outcome, lot }, { groups })] : [];
      }),
    );
