import type { Sowing } from '../../trial/trial.ts';
import type { Comparison, Group, LeftOutReason, Result, UnitValue } from '../analysis.ts';
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
  /** Sowings that did not, by the reason. */
  readonly leftOut: readonly { readonly sowing: Sowing; readonly reason: LeftOutReason }[];
  readonly values: readonly UnitValue[];
  /** Null over several lots, and where the group was not analysed. */
  readonly group: Group | null;
}
