import type { Check } from './unit.ts';

/**
 * The checks of one sowing up to and including `day`, provided that its state on `day` is known:
 * it was checked then, or all its seeds had germinated before. A count is never carried forward
 * otherwise (methods 1), unless `carried` asks for it: the result "with the last earlier count".
 *
 * @returns null where the state on `day` is not known
 */
export function checksUntil(
  checks: readonly Check[],
  seeds: number | null,
  day: number,
  carried: boolean,
): readonly Check[] | null {
  const until = checks.filter((check) => check.day <= day);
  const last = until.at(-1);
  if (last === undefined) return null;
  if (last.day === day) return until;
  return last.total === seeds || carried ? [...until, { day, total: last.total }] : null;
}
