import type { Comparison, Result, Verdict } from '../analysis/analysis.ts';
import { amount, type Amount } from './amount.ts';
import { digitsFor } from './digits-for.ts';

/** A comparison with what was left out put back in: its rounded figures, and what becomes of the finding. */
export interface LeftOutFigures {
  readonly estimate: Amount;
  readonly limits: { readonly lower: Amount; readonly upper: Amount } | null;
  /** The other verdict; `turned` for the same verdict in the other direction; null where nothing changes. */
  readonly change: Verdict | 'turned' | null;
}

/** Figures of a comparison with the left-out sowings in; null where they could not be worked out. */
export function leftOutFigures(
  result: Result,
  { withLeftOut, verdict, estimate }: Pick<Comparison, 'withLeftOut' | 'verdict' | 'estimate'>,
): LeftOutFigures | null {
  if (withLeftOut?.estimate == null) return null;
  const { lower, upper } = withLeftOut.interval ?? { lower: null, upper: null };
  const whole = lower !== null && upper !== null;
  const digits = digitsFor(result.measure, result.unit, whole ? upper - lower : Math.abs(withLeftOut.estimate));
  const round = (value: number) => amount(value, digits, result.matters);
  const turned = Math.sign(withLeftOut.estimate) !== Math.sign(estimate ?? 0) && withLeftOut.verdict !== 'unclear';
  return {
    estimate: round(withLeftOut.estimate),
    limits: whole ? { lower: round(lower), upper: round(upper) } : null,
    change:
      withLeftOut.verdict !== verdict
        ? withLeftOut.verdict
        : turned && (verdict === 'different' || verdict === 'matters')
          ? 'turned'
          : null,
  };
}
