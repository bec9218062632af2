import type { Moisture } from '../analysis.ts';

/** What is compared: the moisture content after treatment, or the water lost where that is not known throughout. */
export type Weighed = 'moistureAfter' | 'waterLost';

/** Moisture content where every weighed batch has one, so that like is compared with like. */
export function weighedAs(rows: readonly Moisture[]): Weighed {
  const treated = rows.filter(({ treatment }) => treatment !== null);
  return treated.length > 0 && treated.every(({ moistureAfter }) => moistureAfter !== null)
    ? 'moistureAfter'
    : 'waterLost';
}
