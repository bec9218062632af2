const last = new WeakMap<object, Map<string, number>>();

/**
 * Counts what stands on one page more than once, so that each has an id of its own. `page` is `Astro.locals`.
 *
 * @param of what is counted; the figures that an author placed where nothing else is said
 */
export function nextNumber(page: object, of = 'figure'): number {
  const counts = last.get(page) ?? new Map<string, number>();
  last.set(page, counts);
  const number = (counts.get(of) ?? 0) + 1;
  counts.set(of, number);
  return number;
}
