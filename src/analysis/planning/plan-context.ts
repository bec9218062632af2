import type { Context } from '../comparisons/context.ts';
import type { PlanDesign } from './plan-design.ts';

/** The planned outcome as the comparisons take it: margin fixed beforehand, crops put together. */
export function planContext({ measure, matters }: PlanDesign): Context {
  const outcome = { id: measure, measure, column: null, day: null, matters, primary: true, pool: true };
  return { outcome, unit: '', marginFixed: true };
}
