/** Counts and sums, in objects of objects. */
export type Sums = { readonly [name: string]: number | Sums };

/** Two sets of sums with the same names added up: the parts of a simulation make the whole. */
export function addSums<T extends object>(one: T, other: T): T {
  return added(one as unknown as Sums, other as unknown as Sums) as unknown as T;
}

function added(one: Sums, other: Sums): Sums {
  const sums: Record<string, number | Sums> = { ...one };
  for (const [name, value] of Object.entries(one)) {
    const more = other[name];
    sums[name] = typeof value === 'number' ? value + (more as number) : added(value, more as Sums);
  }
  return sums;
}
