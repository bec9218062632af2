const last = new WeakMap<object, number>();

/** Counts the figures that an author placed on one page, so that each has an id of its own. `page` is `Astro.locals`. */
export function nextNumber(page: object): number {
  const number = (last.get(page) ?? 0) + 1;
  last.set(page, number);
  return number;
}
