import type { Counted } from '../../statistics/counted.ts';
import type { Unit } from './unit.ts';

/** The counts of units; null where the seeds of any of them are not known, so that no share can be given. */
export function countedUnits(units: readonly Unit[]): readonly Counted[] | null {
  const counts = units.flatMap(({ count, seeds }) => (count === null || seeds === null ? [] : [{ count, seeds }]));
  return counts.length === units.length ? counts : null;
}
