import type { PlanChange } from '../../analysis/analysis.ts';

/** "der Plan wurde in 3 Punkten nicht eingehalten", a reason clause. */
export const planChangesCounted = (changes: readonly PlanChange[]): string =>
  `der Plan wurde in ${changes.length === 1 ? 'einem Punkt' : `${changes.length} Punkten`} nicht eingehalten`;
