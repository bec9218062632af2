import { cumulate, type Check } from './checks.ts';

/**
 * Between which two checks a share of the finally germinated was reached: after the last check before and
 * by the first check at or beyond it. All that the checks really say about a time.
 *
 * @param checks newly germinated by check day, rising days
 * @param share  of the final number, above 0 up to 1 (½ for T50)
 * @returns days; `after` is 0 where the first check was late enough; null where nothing germinated
 * @throws {RangeError} outside those
 *
 * Source: methods.md 5. Checked against: R `findInterval`.
 */
export function shareBracket(checks: readonly Check[], share: number): { after: number; by: number } | null {
  if (!(share > 0 && share <= 1)) throw new RangeError(`shareBracket needs a share above 0 up to 1, got ${share}`);
  const cumulative = cumulate('shareBracket', checks);
  const wanted = share * (cumulative.at(-1)?.total ?? 0);
  if (wanted === 0) return null;
  let after = 0;
  for (const { day, total } of cumulative) {
    if (total >= wanted) return { after, by: day };
    after = day;
  }
  return null;
}
