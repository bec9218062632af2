import { cumulate, type Check } from './checks.ts';

/**
 * Day by which a share of the finally germinated had germinated, on the straight line between the two
 * checks around it. T50 is share ½, of those that germinated, not of those sown.
 *
 * @param checks newly germinated by check day, rising days
 * @param share  of the final number, above 0 up to 1
 * @returns null where nothing germinated, or where the share was there already at the first check (reached at an
 *   unknown time before it)
 * @throws {RangeError} outside those
 *
 * Source: N/2 after Farooq et al. (2005), J. Integr. Plant Biol. 47, 187–193; Coolbear et al. (1984) took (N + 1)/2.
 * Checked against: R `approx` on the cumulative counts.
 */
export function timeToShare(checks: readonly Check[], share: number): number | null {
  if (!(share > 0 && share <= 1)) throw new RangeError(`timeToShare needs a share above 0 up to 1, got ${share}`);
  const cumulative = cumulate('timeToShare', checks);
  const wanted = share * (cumulative.at(-1)?.total ?? 0);
  const reached = cumulative.findIndex(({ total }) => total >= wanted);
  const before = cumulative[reached - 1];
  const at = cumulative[reached];
  if (wanted === 0 || before === undefined || at === undefined) return null;
  return before.day + ((wanted - before.total) / at.newly) * (at.day - before.day);
}
