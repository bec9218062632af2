/**
 * Smallest number of units a treatment with which a difference would be shown.
 *
 * @param difference     wanted, above 0
 * @param detectableWith smallest difference shown with so many units a treatment, falling with their number; null where
 *                       none can be
 * @returns a whole number from 2, or null where even 1000 units would not do
 * @throws {RangeError} when `difference` is not above 0
 *
 * Source: methods.md 7 and 11.
 */
export function unitsToSettle(difference: number, detectableWith: (units: number) => number | null): number | null {
  if (!(difference > 0)) throw new RangeError(`unitsToSettle needs a difference above 0, got ${difference}`);
  const isShown = (units: number) => (detectableWith(units) ?? Infinity) <= difference;
  let [tooFew, enough] = [1, 1000];
  if (!isShown(enough)) return null;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (isShown(middle)) enough = middle;
    else tooFew = middle;
  }
  return enough;
}
