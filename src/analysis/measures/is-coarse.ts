import { shareBracket } from '../../statistics/times/share-bracket.ts';
import type { Check as Newly } from '../../statistics/times/checks.ts';
import type { Measure } from '../../trial/trial.ts';

const COARSE = 0.6;

/**
 * Whether checks were too far apart for a time to be read off them: the gap that holds half of what
 * finally germinated (mean time and spread: any gap) holds more than 0.6 of it (methods 5).
 *
 * @param checks of all units of a group together
 */
export function isCoarse(measure: Measure, checks: readonly Newly[]): boolean {
  const germinated = checks.reduce((sum, { newly }) => sum + newly, 0);
  const half = shareBracket(checks, 0.5)?.by;
  return checks.some(({ day, newly }) => newly > COARSE * germinated && (measure !== 't50' || day === half));
}
