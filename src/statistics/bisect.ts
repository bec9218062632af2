/**
 * Where a monotone function crosses zero between two points, by halving until no double lies between:
 * slow, but it cannot fail and gives the same bits everywhere.
 *
 * @param f    monotone between `from` and `to`, of opposite signs (or zero) at the two
 * @throws {RangeError} when the signs at both ends are the same
 */
export function bisect(f: (x: number) => number, from: number, to: number): number {
  const atFrom = f(from);
  const atTo = f(to);
  if (!(atFrom * atTo <= 0)) {
    throw new RangeError(`bisect needs a change of sign, got ${atFrom} at ${from} and ${atTo} at ${to}`);
  }
  if (atFrom === 0) return from;
  if (atTo === 0) return to;

  let [same, other] = [from, to];
  for (;;) {
    const middle = same + (other - same) / 2;
    if (middle === same || middle === other) return middle;
    const value = f(middle);
    if (value === 0) return middle;
    if (value > 0 === atFrom > 0) same = middle;
    else other = middle;
  }
}
