/** Seeds that responded out of seeds sown, in one unit or one group. `seeds` may be fractional where it was weighed. */
export interface Counted {
  readonly count: number;
  readonly seeds: number;
}

/**
 * Refuses what is not a count out of a number of seeds.
 *
 * @throws {RangeError} naming the function that was called with it
 */
export function checkCounted(caller: string, { count, seeds }: Counted): void {
  if (!(seeds > 0 && seeds < Infinity && count >= 0 && count <= seeds)) {
    throw new RangeError(`${caller} needs a count out of a number of seeds, got ${count} of ${seeds}`);
  }
}
