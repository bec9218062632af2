import type { Measure } from '../../trial/trial.ts';
import { groupChecks } from '../measures/group-checks.ts';
import { isCoarse } from '../measures/is-coarse.ts';
import { isTime } from '../measures/is-time.ts';
import type { UnitGroup } from '../units/unit.ts';
import { lagBracket } from './lag-bracket.ts';
import type { Limits } from './limits.ts';

/** What the days of the checks allow; nothing is known and nothing coarse where the measure is no time. */
export interface Timing {
  readonly bracket: Limits | null;
  readonly coarse: boolean;
  /**
   * Whether the interval's own limits show that there is a difference though checks were coarse. True of a lag;
   * not of a spread, which coarse checks can make out of a mere shift.
   */
  readonly ownHolds: boolean;
}

export function timingOf(measure: Measure, treated: UnitGroup, control: UnitGroup): Timing {
  if (!isTime(measure)) return { bracket: null, coarse: false, ownHolds: true };
  const checks = [groupChecks(treated), groupChecks(control)] as const;
  const coarse = checks.some((group) => isCoarse(measure, group));
  return { bracket: lagBracket(measure, ...checks), coarse, ownHolds: measure !== 'spread' };
}
