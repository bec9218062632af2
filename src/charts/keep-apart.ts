/**
 * Moves labels along one axis until none covers its neighbour: each stays as near to its own place as the others allow.
 *
 * @param places wanted places, in any order
 * @param least  least distance between two labels
 * @param high   no label goes beyond this, nor below 0, unless there is no room for all
 */
export function keepApart(places: readonly number[], least: number, high: number): number[] {
  const order = places.map((_, index) => index).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0) || a - b);
  // Groups of touching labels, each centred on the mean of its wanted places (pool adjacent violators).
  const groups: { members: number[]; centre: number }[] = [];
  const half = ({ members }: { members: number[] }) => ((members.length - 1) * least) / 2;
  const settled = (members: number[]) => {
    const mean = members.reduce((sum, index) => sum + (places[index] ?? 0), 0) / members.length;
    const room = half({ members });
    return { members, centre: Math.max(Math.min(mean, high - room), room) };
  };
  for (const index of order) {
    let group = settled([index]);
    for (let before = groups.at(-1); before && group.centre - half(group) < before.centre + half(before) + least;) {
      groups.pop();
      group = settled([...before.members, ...group.members]);
      before = groups.at(-1);
    }
    groups.push(group);
  }
  const moved = [...places];
  for (const group of groups) {
    group.members.forEach((index, place) => {
      moved[index] = group.centre - half(group) + place * least;
    });
  }
  return moved;
}
