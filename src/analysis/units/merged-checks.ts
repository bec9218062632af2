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
  if (one && others.length === 0 && isRising(one.checks)) return one.checks.map(({ day, total }) => ({ day, total }));
  const next = sowings.map(() => 0); // of each sowing, the place of its first check after the day
  const merged: Check[] = [];
  for (;;) {
    let day = Infinity;
    sowings.forEach(({ checks }, index) => (day = Math.min(day, checks[next[index] ?? 0]?.day ?? Infinity)));
    if (day === Infinity) return merged;
    let total = 0;
    sowings.forEach(({ seeds, checks }, index) => {
      let place = next[index] ?? 0;
      while ((checks[place]?.day ?? Infinity) <= day) place++;
      next[index] = place;
      total += totalOn(checks[place - 1], seeds, day);
    });
    if (!Number.isNaN(total)) merged.push({ day, total });
  }
}

const isRising = (checks: readonly Check[]) =>
  checks.every(({ day }, index) => day > (checks[index - 1]?.day ?? -Infinity));

/** NaN where the sowing is not known on that day, so that no sum with it is. */
function totalOn(last: Check | undefined, seeds: number | null, day: number): number {
  return last !== undefined && (last.day === day || last.total === seeds) ? last.total : NaN;
}
