/**
 * Wilson score interval for a proportion, without continuity correction. Stays inside 0–1 and keeps its
 * coverage when counts are small or near 0 or all. The quantile and an effective size are given, so that
 * tray-to-tray spread can enter (methods.md 1: n/φ* seeds and a t quantile).
 *
 * @param share    proportion observed, 0 to 1
 * @param size     number of seeds it stands for; above 0, need not be whole
 * @param quantile normal or t quantile of the wanted level, above 0 (1.96 for 95 %)
 * @returns both limits as proportions; exactly 0 and 1 at the ends
 * @throws {RangeError} outside those
 *
 * Source: Wilson (1927), J. Am. Stat. Assoc. 22, 209–212; Newcombe (1998a), Stat. Med. 17, 857–872, method 3.
 * Checked against: R `prop.test(x, n, correct = FALSE)$conf.int`.
 */
export function wilsonInterval(share: number, size: number, quantile: number): { lower: number; upper: number } {
  if (!(share >= 0 && share <= 1 && size > 0 && size < Infinity && quantile > 0 && quantile < Infinity)) {
    throw new RangeError(
      `wilsonInterval needs a share from 0 to 1, a size and a quantile above 0, got ${share} of ${size} with ${quantile}`,
    );
  }
  const square = quantile ** 2;
  const centre = share + square / (2 * size);
  const spread = quantile * Math.sqrt((share * (1 - share)) / size + square / (4 * size ** 2));
  const scale = 1 + square / size;

  // At 0 and 1 the limit is exact; the formula would leave a rounding error there.
  const lower = share === 0 ? 0 : Math.max(0, (centre - spread) / scale);
  const upper = share === 1 ? 1 : Math.min(1, (centre + spread) / scale);
  return { lower, upper };
}
