import { moistureOf } from '../moisture.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** Water lost was weighed, but not how moist the seed was at the start: how dry it is now is not known. */
export const startMoistureUnknown: Rule = (trial) => {
  const weighed = moistureOf(trial);
  const known = weighed.filter(({ moistureAfter }) => moistureAfter !== null);
  const unknown = weighed.filter(
    ({ lot, treatment, waterLost, moistureBefore }) =>
      waterLost !== null &&
      moistureBefore === null &&
      !known.some((sample) => sample.lot === lot && sample.treatment === treatment),
  );
  return [...Map.groupBy(unknown, ({ lot }) => lot)].map(([lot, rows]) => {
    const treatments = [...new Set(rows.map(({ treatment }) => treatment))].filter((treatment) => treatment !== null);
    return makeCaveat('start-moisture-unknown', { lot }, { treatments });
  });
};
