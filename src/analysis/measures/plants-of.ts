import type { Measure } from '../../trial/trial.ts';
import type { Unit } from '../units/unit.ts';

/** Plants measured in a unit (traits) or seeds germinated in it (times and rates); null for other measures. */
export function plantsOf(measure: Measure, unit: Unit): number | null {
  if (measure === 'trait') return unit.plants.length;
  return measure === 'germination' || measure === 'storage' || measure === 'moisture' ? null : unit.count;
}
