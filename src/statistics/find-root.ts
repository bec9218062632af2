/**
 * Where a function crosses zero between two points, to the last digits: inverse quadratic steps where the
 * three latest points allow them, halving where not, so that it is quick and cannot fail.
 *
 * @param f continuous, of opposite signs (or zero) at `from` and `to`
 * @throws {RangeError} when the signs at both ends are the same, or `f` gives what is no number
 *
 * Source: Chandrupatla (1997), Adv. Eng. Softw. 28, 145–149. Checked against: known roots; R `uniroot` through its callers.
 */
export function findRoot(f: (x: number) => number, from: number, to: number): number {
  // a, the latest point, and b enclose the root; c is the one that a or b replaced.
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (!(fa * fb <= 0)) throw new RangeError(`findRoot needs a change of sign, got ${fa} at ${from} and ${fb} at ${to}`);
  if (fa === 0) return a;
  if (fb === 0) return b;

  let share = 0.5;
  for (;;) {
    const x = a + share * (b - a);
    const fx = f(x);
    if (Number.isNaN(fx)) throw new RangeError(`findRoot needs numbers, got ${fx} at ${x}`);
    const isSameSide = fx > 0 === fa > 0;
    const [c, fc] = isSameSide ? [a, fa] : [b, fb];
    if (!isSameSide) [b, fb] = [a, fa];
    [a, fa] = [x, fx];

    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const room = (2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (fa === 0 || room > 0.5) return fa === 0 ? a : best;

    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const isSafe = phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi;
    const quadratic = (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
    share = Math.min(1 - room, Math.max(room, isSafe ? quadratic : 0.5));
  }
}
