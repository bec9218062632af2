import type { Timed } from '../../statistics/storage/compare-lines.ts';
import type { UnitGroup } from '../units/unit.ts';

/** Units of one storage time with that time, years; those whose seeds are not known say nothing. */
export const timedUnits = ({ stored, units }: UnitGroup): readonly Timed[] =>
  units.flatMap(({ count, seeds }) =>
    count === null || seeds === null || seeds === 0 || stored === null ? [] : [{ count, seeds, time: stored }],
  );
