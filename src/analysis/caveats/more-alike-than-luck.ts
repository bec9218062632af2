import { moreAlikeThanChance } from '../more-alike-than-chance.ts';
import { countedUnits } from './counted-units.ts';
import { makeCaveat } from './make-caveat.ts';
import { isGermination } from './measures.ts';
import type { Rule } from './rule.ts';
import { unitGroups } from './unit-groups.ts';

/** Units of the same treatment agree better than chance lets them in 99 of 100 trials (methods 12): a question. */
export const moreAlikeThanLuck: Rule = (trial, results) =>
  results.filter(isGermination).flatMap((result) =>
    trial.lots.flatMap(({ id: lot }) => {
      const alike = moreAlikeThanChance(unitGroups(result, lot).map(({ values }) => countedUnits(values)));
      const isTooAlike = alike !== null && alike.p < 0.01;
      return isTooAlike ? [makeCaveat('more-alike-than-luck', { outcome: result.outcome, lot }, alike)] : [];
    }),
  );
