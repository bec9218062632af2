/**
 * Things of the same group one after the other, groups in the order in which they come, and what belongs to none spread
 * evenly between them.
 *
 * @param groupOf null: of none
 */
export function sideBySide<Item>(items: readonly Item[], groupOf: (item: Item) => string | null): Item[] {
  const groups = [...Map.groupBy(items, groupOf)].flatMap(([group, all]) => (group === null ? [] : [all]));
  const others = items.filter((item) => groupOf(item) === null);
  const share = others.length / Math.max(1, groups.length);
  const between = (index: number) => others.slice(Math.round(index * share), Math.round((index + 1) * share));
  return groups.length === 0 ? others : groups.flatMap((all, index) => [...all, ...between(index)]);
}
