import type { Unit } from './read-unit.ts';

/**
 * A value in another unit of the same kind. The same unit gives back the very same number.
 *
 * @throws {RangeError} where the kinds differ or either is a temperature
 */
export function convertUnit(value: number, from: Unit, to: Unit): number {
  if (from.name === to.name) return value;
  if (from.kind !== to.kind || from.factor === null || to.factor === null) {
    throw new RangeError(`convertUnit needs two units of one kind with factors, got ${from.name} and ${to.name}`);
  }
  return (value * from.factor) / to.factor;
}
