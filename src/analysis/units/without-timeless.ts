import type { LotUnits } from './lot-units.ts';
import type { LeftOut, Unit, UnitGroup } from './unit.ts';

/** A unit in which nothing germinated has no time: it is left out of times, and listed (methods 5). */
export function withoutTimeless(units: LotUnits): LotUnits {
  const timeless = new Set(units.groups.flatMap((group) => group.units.filter(isTimeless)).flatMap(sowingsIn));
  const leftOut = [...timeless].map((sowing): LeftOut => ({ sowing, reason: 'nothing-germinated', what: null }));
  return {
    ...units,
    groups: units.groups.map(timed),
    pairs: units.pairs.map((pair) => ({
      ...pair,
      treated: timed(pair.treated),
      control: timed(pair.control),
      others: pair.others.map(timed),
    })),
    leftOut: [...units.leftOut, ...leftOut],
  };
}

const isTimeless = ({ count }: Unit): boolean => count === 0;
const sowingsIn = ({ sowings }: Unit): readonly string[] => sowings;
const timed = (group: UnitGroup): UnitGroup => ({ ...group, units: group.units.filter((unit) => !isTimeless(unit)) });
