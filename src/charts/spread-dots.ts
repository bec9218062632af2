/**
 * Keeps dots that would cover each other apart: for each place along an axis, how far to move the dot across it.
 * Dots pile outwards from the line, alternately to both sides, in the order of their values, without chance.
 *
 * @param places along the axis, in the unit of the drawing
 * @param size   width of a dot
 * @param room   how far a dot may move to either side; a fuller pile is packed closer
 */
export function spreadDots(places: readonly number[], size: number, room: number): number[] {
  const order = places.map((_, index) => index).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0) || a - b);
  const levels: number[] = [];
  for (const index of order) {
    const near = order.filter(
      (o) => levels[o] !== undefined && Math.abs((places[o] ?? 0) - (places[index] ?? 0)) < size,
    );
    const taken = new Set(near.map((o) => levels[o]));
    let level = 0;
    while (taken.has(level)) level = level > 0 ? -level : -level + 1;
    levels[index] = level;
  }
  const highest = Math.max(0, ...levels.map(Math.abs));
  const step = Math.min(size, highest === 0 ? size : room / highest);
  return places.map((_, index) => (levels[index] ?? 0) * step || 0);
}
