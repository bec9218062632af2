import type { DesignFault } from '../../analysis/planning/design-faults.ts';
import type { PlanDesign } from '../../analysis/planning/plan-design.ts';
import type { PlanSpeech } from './plan-amounts.ts';

/** What is wrong with a design and how to mend it, as a sentence or two. */
export function designFault(fault: DesignFault, measure: PlanDesign['measure'], { say }: PlanSpeech): string {
  return say(fault === 'base' || fault === 'spread' ? `answer.fault.${fault}.${measure}` : `answer.fault.${fault}`, {});
}
