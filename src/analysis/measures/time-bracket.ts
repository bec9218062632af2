import { shareBracket } from '../../statistics/times/share-bracket.ts';
import type { Check as Newly } from '../../statistics/times/checks.ts';
import type { Measure } from '../../trial/trial.ts';

/**
 * What the checks of a group allow for its time: half was reached after one check and by another. A spread
 * is a length of time: a quarter was reached in (L₂₅, U₂₅] and three quarters in (L₇₅, U₇₅], so it lies
 * between L₇₅ − U₂₅, at least 0, and U₇₅ − L₂₅.
 *
 * @param checks of all units of the group together
 * @returns days; null where nothing germinated
 */
export function timeBracket(measure: Measure, checks: readonly Newly[]): { after: number; by: number } | null {
  if (measure !== 'spread') return shareBracket(checks, 0.5);
  const [first, last] = [shareBracket(checks, 0.25), shareBracket(checks, 0.75)];
  if (first === null || last === null) return null;
  return { after: Math.max(0, last.after - first.by), by: last.by - first.after };
}
