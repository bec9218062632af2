import { shareBracket } from '../../statistics/times/share-bracket.ts';
import { groupChecks } from '../measures/group-checks.ts';
import type { UnitGroup } from '../units/unit.ts';
import type { Limits } from './limits.ts';

/**
 * What the checks allow for a lag: half was reached in (L₁, U₁] by the control and in (L₂, U₂] by the
 * treatment, so the lag lies in (L₂ − U₁, U₂ − L₁) (methods 5).
 *
 * @returns days, treatment minus control; null where nothing germinated in one of them
 */
export function lagBracket(treated: UnitGroup, control: UnitGroup): Limits | null {
  const [two, one] = [shareBracket(groupChecks(treated), 0.5), shareBracket(groupChecks(control), 0.5)];
  return one === null || two === null ? null : { lower: two.after - one.by, upper: two.by - one.after };
}
