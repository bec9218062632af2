import type { Sowing } from '../../trial/trial.ts';
import type { Comparison, Result, UnitValue } from '../analysis.ts';
import type { About } from './make-caveat.ts';

/** A treatment beside the control in one outcome, with what was sown of each. */
export interface Pair {
  readonly result: Result;
  readonly comparison: Comparison;
  readonly treated: Side;
  readonly control: Side;
  /** One unit, or none, on either side: nothing can be tested, so what else differs between two trays is moot. */
  readonly single: boolean;
  /** Outcome, lot and treatment, for a caveat on this comparison. */
  readonly about: Required<About>;
}

export interface Side {
  readonly treatment: string;
  /** Sowings that entered the outcome. */
  readonly sowings: readonly Sowing[];
  /** Sowings that were left out because they were not checked on the day. */
  readonly unchecked: readonly Sowing[];
  readonly values: readonly UnitValue[];
}
