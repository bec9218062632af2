/** So many trials at once, so that the chance of no success at all stays a number. */
const MOST = 500;

/**
 * One draw from a binomial distribution: how many of `size` succeed, each with chance `share`.
 *
 * @param size  a whole number, 0 or more
 * @param share 0 to 1
 * @throws {RangeError} outside those
 *
 * Source: inversion, term by term from the end that is nearer. Checked against: R `pbinom`, share of draws below.
 */
export function binomialDraw(size: number, share: number, random: () => number): number {
  if (!(Number.isInteger(size) && size >= 0 && share >= 0 && share <= 1)) {
    throw new RangeError(`binomialDraw needs a whole number and a share, got ${size} and ${share}`);
  }
  if (share > 0.5) return size - binomialDraw(size, 1 - share, random);
  if (size > MOST) return binomialDraw(MOST, share, random) + binomialDraw(size - MOST, share, random);

  const odds = share / (1 - share);
  let chance = (1 - share) ** size;
  let left = random() - chance;
  let count = 0;
  while (left > 0 && count < size) {
    chance *= (odds * (size - count)) / (count + 1);
    count++;
    left -= chance;
  }
  return count;
}
