import type { UnitGroup } from './unit.ts';

/**
 * Groups that share no sowing with an earlier one: the start of a storage series is shown with every
 * treatment, and counts once where groups are put together.
 *
 * @param before groups that come first and are not returned
 */
export function distinctGroups(groups: readonly UnitGroup[], before: readonly UnitGroup[] = []): readonly UnitGroup[] {
  const seen = new Set(before.flatMap(sowingsIn));
  return groups.filter((group) => {
    const own = sowingsIn(group);
    const isNew = !own.some((sowing) => seen.has(sowing));
    for (const sowing of own) seen.add(sowing);
    return isNew;
  });
}

const sowingsIn = ({ units }: UnitGroup): readonly string[] => units.flatMap((unit) => unit.sowings);
