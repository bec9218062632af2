/**
 * How many times as large the first proportion is as the second.
 *
 * @param first  proportion, 0 to 1
 * @param second proportion, 0 to 1
 * @returns null where either is 0: a ratio to or from nothing says nothing
 * @throws {RangeError} outside 0 to 1
 *
 * Source: definition, methods.md 2. Checked against: R arithmetic.
 */
export function riskRatio(first: number, second: number): number | null {
  if (!(first >= 0 && first <= 1 && second >= 0 && second <= 1)) {
    throw new RangeError(`riskRatio needs two proportions, got ${first} and ${second}`);
  }
  return first === 0 || second === 0 ? null : first / second;
}
