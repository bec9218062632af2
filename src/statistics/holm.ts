/**
 * p-values adjusted for having looked at several comparisons, in the order given: the smallest times the
 * number of comparisons, the next times one less, and so on, never falling and never above 1.
 *
 * @throws {RangeError} when a value is not a probability
 *
 * Source: Holm (1979), Scand. J. Stat. 6, 65–70. Checked against: R `p.adjust(p, "holm")`.
 */
export function holm(p: readonly number[]): number[] {
  if (!p.every((value) => value >= 0 && value <= 1)) {
    throw new RangeError(`holm needs probabilities, got ${JSON.stringify(p)}`);
  }
  const adjusted = [...p];
  let least = 0;
  [...p.entries()]
    .sort(([, a], [, b]) => a - b)
    .forEach(([index, value], rank) => {
      least = Math.max(least, Math.min(1, value * (p.length - rank)));
      adjusted[index] = least;
    });
  return adjusted;
}
