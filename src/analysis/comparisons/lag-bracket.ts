import type { Measure } from '../../trial/trial.ts';
import { timeBracket } from '../measures/time-bracket.ts';
import type { Check as Newly } from '../../statistics/times/checks.ts';
import type { Limits } from './limits.ts';

/**
 * What the checks allow for a difference of times: half was reached in (L₁, U₁] by the control and in
 * (L₂, U₂] by the treatment, so the lag lies in (L₂ − U₁, U₂ − L₁) (methods 5); likewise for two spreads.
 *
 * @param treated checks of all units of the treatment together
 * @param control of the control
 * @returns days, treatment minus control; null where nothing germinated in one of them
 */
export function lagBracket(measure: Measure, treated: readonly Newly[], control: readonly Newly[]): Limits | null {
  const [two, one] = [timeBracket(measure, treated), timeBracket(measure, control)];
  return one === null || two === null ? null : { lower: two.after - one.by, upper: two.by - one.after };
}
