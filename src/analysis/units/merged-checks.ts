import type { Check } from './unit.ts';
import type { Checked } from './day-of-lot.ts';

/**
 * Counts of several sowings added up, for the days on which all of them are known: checked, or all
 * seeds germinated before. Other days are passed over, never guessed.
 *
 * @param sowings each with its checks by day
 */
export function mergedChecks(sowings: readonly Checked[]): readonly Check[] {
  const [one, ...others] = sowings;
  if (one && isRising(one.checks) && others.every(({ checks }) => haveSameDays(checks, one.checks))) {
    if (others.length === 0) return one.checks;
    const inOthers = (index: number) => others.reduce((sum, { checks }) => sum + (checks[index]?.total ?? 0), 0);
    return one.checks.map(({ day, total }, index) => ({ day, total: total + inOthers(index) }));
  }
  const days = [...new Set(sowings.flatMap(({ checks }) => checks.map(({ day }) => day)))].sort((a, b) => a - b);
  const latest = sowings.map(() => -1); // of each sowing, the place of its last check up to the day
  return days.flatMap((day) => {
    let total = 0;
    for (const [index, { seeds, checks }] of sowings.entries()) {
      let place = latest[index] ?? -1;
      while ((checks[place + 1]?.day ?? Infinity) <= day) place++;
      latest[index] = place;
      total += totalOn(checks[place], seeds, day);
    }
    return Number.isNaN(total) ? [] : [{ day, total }];
  });
}

const isRising = (checks: readonly Check[]) =>
  checks.every(({ day }, index) => day > (checks[index - 1]?.day ?? -Infinity));

const haveSameDays = (one: readonly Check[], other: readonly Check[]) =>
  one.length === other.length && one.every(({ day }, index) => day === other[index]?.day);

/** NaN where the sowing is not known on that day, so that no sum with it is. */
function totalOn(last: Check | undefined, seeds: number | null, day: number): number {
  return last !== undefined && (last.day === day || last.total === seeds) ? last.total : NaN;
}
