import type { Result, UnitValue } from '../../src/analysis/analysis.ts';
import type { Sowing, Trial } from '../../src/trial/trial.ts';
import { makeComparison } from './make-comparison.ts';
import { makeGroup, makeResult } from './make-result.ts';

/**
 * The result of an outcome as far as rules about the trial need it: a group and a row of values from every
 * lot, treatment and sowing (with its last count up to `day`), and each treatment beside the control. No statistics.
 */
export function resultOf(trial: Trial, parts: Partial<Result> = {}): Result {
  const day = parts.day ?? 14;
  const out = new Set(parts.leftOut?.map(({ sowing }) => sowing));
  const sowings = trial.sowings.filter(({ id }) => !out.has(id));
  const values = sowings.map((sowing) => valueOf(trial, sowing, day));
  const control = trial.treatments.find((treatment) => treatment.control)?.id ?? '';

  const groups = trial.lots.flatMap(({ id: lot }) =>
    trial.treatments.map(({ id }) => {
      const own = values.filter((value) => value.lot === lot && value.treatment === id);
      const [seeds, count] = [sum(own.map((value) => value.seeds)), sum(own.map((value) => value.count))];
      const estimate = seeds === 0 ? null : (100 * count) / seeds;
      return makeGroup(id, { lot, interval: null, units: own.length, sowings: own.length, seeds, count, estimate });
    }),
  );
  const comparisons = groups
    .filter(({ treatment }) => treatment !== control)
    .map(({ lot, treatment, units }) => {
      const other = groups.find((group) => group.lot === lot && group.treatment === control)?.units ?? 0;
      const counted = { treatment: units, control: other, kind: 'sowing' } as const;
      return makeComparison({ estimate: null, parts: { lot, treatment, control, units: counted } });
    });
  return makeResult({ groups, comparisons, values, day, days: {}, ...parts });
}

function valueOf(trial: Trial, sowing: Sowing, day: number): UnitValue {
  const counts = trial.counts.filter((count) => count.sowing === sowing.id && count.day <= day);
  const count = counts.toSorted((a, b) => a.day - b.day).at(-1)?.germinated ?? null;
  const { id, lot, treatment, stored, block, seeds } = sowing;
  const value = count === null || seeds === null ? null : (100 * count) / seeds;
  return { lot, treatment: treatment ?? '', stored, block, unit: id, sowings: [id], seeds, count, value, plants: null };
}

const sum = (values: readonly (number | null)[]): number =>
  values.reduce<number>((total, value) => total + (value ?? 0), 0);
