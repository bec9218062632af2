/** Beyond so many units of each nobody will go. */
const MOST = 1000;

/**
 * Smallest number of units a treatment with which a difference would be shown.
 *
 * @param difference     wanted, above 0
 * @param detectableWith smallest difference shown with so many units a treatment, falling with their number; null where
 *                       none can be
 * @param guess          where to look first; any guess leads to the same answer
 * @returns a whole number from 2, or null where even 1000 units would not do
 * @throws {RangeError} when `difference` is not above 0
 *
 * Source: methods.md 7 and 11.
 */
export function unitsToSettle(
  difference: number,
  detectableWith: (units: number) => number | null,
  guess = 16,
): number | null {
  if (!(difference > 0)) throw new RangeError(`unitsToSettle needs a difference above 0, got ${difference}`);
  const isShown = (units: number) => (detectableWith(units) ?? Infinity) <= difference;
  let [tooFew, enough] = [1, MOST + 1];
  let units = Math.min(MOST, Math.max(2, Math.round(guess)));
  // From the guess outwards in steps that double; once both sides are known, by halving.
  for (let step = 1; enough - tooFew > 1; step *= 2) {
    if (isShown(units)) enough = units;
    else tooFew = units;
    if (enough > MOST) units = Math.min(MOST, tooFew + step);
    else if (tooFew === 1) units = Math.max(2, enough - step);
    else units = Math.floor((tooFew + enough) / 2);
  }
  return enough > MOST ? null : enough;
}
