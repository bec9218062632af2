import type { Outcome } from '../../trial/trial.ts';

/** What holds for all comparisons of one outcome. */
export interface Context {
  readonly outcome: Outcome;
  /** Unit of the differences. */
  readonly unit: string;
  /** The margin was fixed before the first count. */
  readonly marginFixed: boolean;
}
