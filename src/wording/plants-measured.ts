import type { Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';

/**
 * Plants measured and seeds sown of one side of a trait's comparison, over the units that entered. Null
 * where whole sowings were measured rather than plants, or where a seed number is not known.
 */
export function plantsMeasured(
  trial: Trial,
  result: Result,
  { lot, lots, stored }: Comparison,
  treatment: string,
): { readonly plants: number; readonly seeds: number } | null {
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
  return plants > 0 ? { plants, seeds } : null;
}
