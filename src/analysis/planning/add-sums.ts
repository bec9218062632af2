/** Counts and sums, in objects of objects. */
export type Sums = { readonly [name: string]: number | Sums };

/** Two sets of sums with the same names added up: the parts of a simulation make the whole. */
export function addSums<T extends object>(one: T, other: T): T {
  const add = (a: number | Sums, b: number | Sums | undefined): number | Sums =>
    typeof a === 'number'
      ? a + (b as number)
      : Object.fromEntries(Object.entries(a).map(([name, value]) => [name, add(value, (b as Sums)[name])]));
  return add(one as unknown as Sums, other as unknown as Sums) as unknown as T;
}
