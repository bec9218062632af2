import type { Measure } from '../../trial/trial.ts';
import { isTime } from './is-time.ts';

/** Times and rates: they are read from all checks up to a day, not from one. */
export function isSpeed(measure: Measure): boolean {
  return isTime(measure) || measure === 'maguire';
}
