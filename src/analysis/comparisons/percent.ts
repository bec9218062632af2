/** A proportion, or the limits of one, as a percentage or in percentage points. */
export function percent({ lower, upper }: { lower: number; upper: number }): { lower: number; upper: number } {
  return { lower: 100 * lower, upper: 100 * upper };
}
