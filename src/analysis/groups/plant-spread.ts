import { intraclassCorrelation } from '../../statistics/intraclass-correlation.ts';
import { variance } from '../../statistics/variance.ts';
import type { Unit } from '../units/unit.ts';

/**
 * Spread of plants within their units, and how alike plants of the same unit are (methods 6); both null
 * where plants were not told apart or no unit has two.
 */
export function plantSpread(units: readonly Unit[]): { readonly icc: number | null; readonly plantSd: number | null } {
  const plants = units.map((unit) => unit.plants);
  const several = plants.filter((values) => values.length > 1);
  if (several.length === 0 || !units.every((unit) => unit.toldApart)) return { icc: null, plantSd: null };

  const squares = several.reduce((sum, values) => sum + (values.length - 1) * variance(values), 0);
  const df = several.reduce((sum, values) => sum + values.length - 1, 0);
  return { icc: intraclassCorrelation(plants), plantSd: Math.sqrt(squares / df) };
}
