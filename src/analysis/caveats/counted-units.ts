import type { Counted } from '../../statistics/counted.ts';
import type { UnitValue } from '../analysis.ts';

/** Units as counts out of seeds; those without a seed number are passed over. */
export const countedUnits = (values: readonly UnitValue[]): readonly Counted[] =>
  values.flatMap(({ count, seeds }) => (count === null || seeds === null || seeds === 0 ? [] : [{ count, seeds }]));
