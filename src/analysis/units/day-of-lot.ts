import type { Check } from './unit.ts';

/** The checks of one sowing, by day, and the seeds that were sown in it. */
export interface Checked {
  readonly seeds: number | null;
  readonly checks: readonly Check[];
}

/**
 * The day on which all sowings of a lot are read (methods 1). The wanted day where any sowing was
 * checked on it; otherwise, among the days on which the most sowings were checked (all of them,
 * where there is such a day), the nearest later one, else the nearest earlier one. Without a wanted
 * day the last of those days. A sowing whose seeds have all germinated counts as checked from then on.
 *
 * @returns null where nothing was checked at all
 */
export function dayOfLot(wanted: number | null, sowings: readonly Checked[]): number | null {
  if (sowings.some(({ checks }) => checks.some(({ day }) => day === wanted))) return wanted;

  const days = [...new Set(sowings.flatMap(({ checks }) => checks.map(({ day }) => day)))].sort((a, b) => a - b);
  const checked = days.map((day) => sowings.filter((sowing) => isKnownOn(sowing, day)).length);
  const most = Math.max(...checked);
  const shared = days.filter((_, index) => checked[index] === most);
  if (wanted === null) return shared.at(-1) ?? null;
  return shared.find((day) => day > wanted) ?? shared.at(-1) ?? null;
}

function isKnownOn({ seeds, checks }: Checked, day: number): boolean {
  return checks.some((check) => check.day === day || (check.day < day && check.total === seeds));
}
