import type { PlanChange } from '../../analysis/analysis.ts';
import { counted } from './counted.ts';

/** "the plan was not kept in 3 points", for a reason clause. */
export const planChangesCounted = (changes: readonly PlanChange[]): string =>
  changes.length === 1
    ? 'the plan was not kept in one point'
    : `the plan was not kept in ${counted(changes.length, 'point')}`;
