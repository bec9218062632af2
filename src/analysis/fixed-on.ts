import type { Trial } from '../trial/trial.ts';
import { firstCountDate } from './first-count-date.ts';

/** When the question and its margins were fixed, and how that is known. */
export interface Fixing {
  /** ISO date. */
  readonly date: string;
  /** `plan`: a frozen plan whose digest holds; `stated`: as stated by the authors. */
  readonly how: 'plan' | 'stated';
}

/**
 * The date on which outcomes and margins were fixed, if that was before the first count. Dates have no
 * hours, so the day of the first count itself is too late. A frozen plan counts where its digest still
 * holds; a plan without a digest is no more than a statement by the authors, as `fixed_beforehand` is.
 *
 * A plan that was edited after it was sealed vouches for nothing, and no stated date mends that.
 *
 * @returns null where nothing was fixed, too late, or the plan was edited afterwards
 */
export function fixedOn(trial: Trial): Fixing | null {
  const { plan, fixedBeforehand } = trial;
  const firstCount = firstCountDate(trial);
  const inTime = (date: string) => firstCount === null || date < firstCount;

  if (plan !== null && plan.digest !== null && plan.digest !== plan.computedDigest) return null;
  if (plan !== null && plan.digest !== null && inTime(plan.fixed)) {
    return { date: plan.fixed, how: 'plan' };
  }
  const stated = plan?.digest === null ? plan.fixed : fixedBeforehand;
  return stated !== null && inTime(stated) ? { date: stated, how: 'stated' } : null;
}
