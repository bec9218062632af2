/**
 * Two groups in an order that does not depend on which of them is the treatment, so that the same
 * arrangements are drawn when the two swap.
 */
export function inOneOrder<Unit>(
  one: readonly Unit[],
  other: readonly Unit[],
): readonly [readonly Unit[], readonly Unit[]] {
  const isFirst =
    one.length === other.length ? JSON.stringify(one) <= JSON.stringify(other) : one.length < other.length;
  return isFirst ? [one, other] : [other, one];
}
