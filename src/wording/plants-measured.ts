import type { Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';

export interface PlantsMeasured {
  readonly plants: number;
  readonly seeds: number;
  /** Seedlings up at the last check of each sowing; null where they were not counted. */
  readonly up: number | null;
}

/**
 * Plants measured and seeds sown of one side of a trait's comparison, over the units that entered. Null
 * where whole sowings were measured rather than plants, or where a seed number is not known.
 */
export function plantsMeasured(
  trial: Trial,
  result: Result,
  { lot, lots, stored }: Comparison,
  treatment: string,
): PlantsMeasured | null {
  const within = lots ?? [lot];
  const units = result.values.filter(
    (unit) => within.includes(unit.lot) && unit.treatment === treatment && unit.stored === stored,
  );
  const sowings = new Set(units.flatMap((unit) => unit.sowings));
  const whole = trial.measurements.some(
    (row) => row.plant === null && sowings.has(row.sowing) && (row.values[result.column ?? ''] ?? null) !== null,
  );
  if (whole || sowings.size === 0) return null;
  let seeds = 0;
  for (const sowing of trial.sowings) {
    if (!sowings.has(sowing.id)) continue;
    if (sowing.seeds === null) return null;
    seeds += sowing.seeds;
  }
  const plants = units.reduce((sum, unit) => sum + (unit.plants ?? 0), 0);
  return plants > 0 ? { plants, seeds, up: lastCounts(trial, sowings) } : null;
}

function lastCounts({ counts }: Trial, sowings: ReadonlySet<string>): number | null {
  const highest = new Map<string, number>();
  for (const { sowing, germinated } of counts) {
    if (germinated !== null && sowings.has(sowing)) highest.set(sowing, Math.max(germinated, highest.get(sowing) ?? 0));
  }
  return highest.size === sowings.size ? [...highest.values()].reduce((sum, count) => sum + count, 0) : null;
}
