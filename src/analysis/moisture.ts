import { moistureAfter } from '../statistics/moisture/moisture-after.ts';
import { waterLost } from '../statistics/moisture/water-lost.ts';
import { wetBasis } from '../statistics/moisture/wet-basis.ts';
import type { Lot, Trial, Weighing } from '../trial/trial.ts';
import type { Moisture } from './analysis.ts';
import { massesOf, type Masses } from './moisture/masses-of.ts';
import { overReadings, type Reading } from './moisture/over-readings.ts';
import { readingsOf } from './moisture/readings-of.ts';

/**
 * Water lost and moisture content (wet basis) of each batch and repeat that was weighed (methods 8).
 *
 * - Water lost needs `before` and `after` of the same seeds.
 * - Moisture before comes from an oven-dry weighing of the same seeds, else from the mean of the lot's
 *   seeds that were weighed as received and oven-dried, else from the lot's own `moisture`; else it is not known.
 * - Moisture after comes from an oven-dry weighing, else from moisture before and the two masses.
 * - Ranges are what the steps of the scale allow; null where a step is not given.
 *
 * @returns one row a batch and repeat in the order of the trial's lots and treatments, samples of the lot
 *   first; a value that cannot be known, or would be below zero, is null
 */
export function moistureOf(trial: Trial): Moisture[] {
  const treatments = [null, ...trial.treatments.map(({ id }) => id)];
  return trial.lots.flatMap((lot) => {
    const weighed = massesOf(trial.weighings.filter((weighing) => weighing.lot === lot.id && holdsSeed(weighing)));
    const initial = initialMoisture(lot, weighed);
    return treatments
      .flatMap((treatment) => weighed.filter((masses) => masses.treatment === treatment))
      .filter(({ before, after, dry }) => [before, after, dry].filter((mass) => mass !== null).length >= 2)
      .map((masses) => moistureRow(lot.id, masses, initial));
  });
}

const holdsSeed = ({ mass, container }: Weighing): boolean => mass > (container ?? 0);

function moistureRow(lot: string, masses: Masses, initial: Reading | null): Moisture {
  const { treatment, batch, repeat, before, after } = masses;
  const lost = before && after ? lostBetween(before, after) : null;
  const start = ovenMoisture(before, masses.dry) ?? initial;
  const end = ovenMoisture(after, masses.dry) ?? (before && after && start ? driedFrom(start, before, after) : null);
  const possible = end !== null && end.value >= 0 ? end : null;
  return {
    lot,
    treatment,
    waterLost: lost?.value ?? null,
    moistureBefore: start?.value ?? null,
    moistureAfter: possible?.value ?? null,
    waterLostRange: lost?.range ?? null,
    moistureAfterRange: possible?.range ?? null,
    batch,
    repeat,
  };
}

function lostBetween(before: Weighing, after: Weighing): Reading {
  const formula = (container = 0, first = 0, second = 0) => waterLost(first - container, second - container);
  return overReadings(formula, readingsOf(before, after));
}

function driedFrom(start: Reading, before: Weighing, after: Weighing): Reading {
  const formula = (initial = 0, container = 0, first = 0, second = 0) =>
    moistureAfter(initial, first - container, second - container);
  return overReadings(formula, [start, ...readingsOf(before, after)]);
}

function ovenMoisture(fresh: Weighing | null, dry: Weighing | null): Reading | null {
  if (fresh === null || dry === null) return null;
  const formula = (container = 0, first = 0, second = 0) => wetBasis(first, second, container);
  return overReadings(formula, readingsOf(fresh, dry));
}

/** Mean over the lot's seeds that were weighed as received and oven-dried, else what is known of the lot. */
function initialMoisture({ moisture }: Lot, weighed: readonly Masses[]): Reading | null {
  const samples = weighed.map(({ before, dry }) => ovenMoisture(before, dry)).filter((sample) => sample !== null);
  if (samples.length > 0) return meanReading(samples);
  return moisture === null ? null : { value: moisture, range: { lower: moisture, upper: moisture } };
}

function meanReading(readings: readonly Reading[]): Reading {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const ranges = readings.map(({ range }) => range).filter((range) => range !== null);
  const all = ranges.length === readings.length;
  return {
    value: mean(readings.map(({ value }) => value)),
    range: all
      ? { lower: mean(ranges.map(({ lower }) => lower)), upper: mean(ranges.map(({ upper }) => upper)) }
      : null,
  };
}
