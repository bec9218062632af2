import type { Group, Result } from './analysis.ts';

/**
 * The groups of some lots in the order of the result, a row each; where a series was sown once at the start, what
 * stands for every treatment is one row.
 */
export function rowsOfGroups({ groups, values }: Result, lots: readonly string[]): readonly (readonly Group[])[] {
  const keyOf = ({ lot, treatment, stored }: Group, place: number): string => {
    if (stored !== 0) return `${place}`;
    const units = values.filter((one) => one.lot === lot && one.treatment === treatment && one.stored === 0);
    return units.length === 0 ? `${place}` : JSON.stringify([lot, ...units.map(({ unit }) => unit)]);
  };
  return lots.flatMap((lot) => {
    const ofLot = groups.filter((group) => group.lot === lot);
    return [...Map.groupBy(ofLot, (group) => keyOf(group, ofLot.indexOf(group))).values()];
  });
}
