/** One check of a unit: `newly` seeds had germinated since the check before. Day 0 is the sowing. */
export interface Check {
  readonly day: number;
  readonly newly: number;
}

/** A check with the total germinated up to it. */
export interface Cumulative extends Check {
  readonly total: number;
}

/**
 * Checks after day 0 with running totals. A check on day 0 that found nothing says nothing and is dropped.
 *
 * @throws {RangeError} when days do not rise, a count is negative, or seeds germinated on day 0 or before
 */
export function cumulate(caller: string, checks: readonly Check[]): Cumulative[] {
  let total = 0;
  let before = -Infinity;
  const cumulative: Cumulative[] = [];
  for (const { day, newly } of checks) {
    const isCheck = day > before && day < Infinity && day >= 0 && newly >= 0 && newly < Infinity;
    if (!isCheck || (day === 0 && newly > 0)) {
      throw new RangeError(
        `${caller} needs checks on rising days after sowing with counts of 0 or more, got ${newly} on day ${day} after day ${before}`,
      );
    }
    before = day;
    total += newly;
    if (day > 0) cumulative.push({ day, newly, total });
  }
  return cumulative;
}
