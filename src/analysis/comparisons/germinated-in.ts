import type { Measure } from '../../trial/trial.ts';
import type { Unit } from '../units/unit.ts';

/** Seeds germinated in all these units, for outcomes read from counts; null for those that are not. */
export function germinatedIn(measure: Measure, units: readonly Unit[]): number | null {
  if (measure === 'trait' || measure === 'moisture') return null;
  return units.reduce((sum, { count }) => sum + (count ?? 0), 0);
}
