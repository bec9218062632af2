import type { PlanWarning } from '../../analysis/planning/plan-warnings.ts';
import type { PlanSpeech } from './plan-amounts.ts';

/** A warning before sowing, as a sentence or two. */
export const planWarning = (warning: PlanWarning, { say }: PlanSpeech): string => say(`answer.warn.${warning}`, {});
