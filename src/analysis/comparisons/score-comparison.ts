import type { Counted } from '../../statistics/counted.ts';
import { fUpper } from '../../statistics/distributions/f.ts';
import { tQuantile } from '../../statistics/distributions/t.ts';
import { newcombeInterval } from '../../statistics/newcombe-interval.ts';
import { pearsonTwoByTwo } from '../../statistics/pearson-two-by-two.ts';
import type { Limits } from './limits.ts';
import { percent } from './percent.ts';

/** A difference of germination with its interval and test. Percentage points. */
export interface ScoreComparison {
  readonly estimate: number;
  limits(level: number): Limits;
  readonly statistic: number;
  readonly p: number;
}

/**
 * Germination of two groups (methods 2): Newcombe's interval and the score test, both on effective seed numbers.
 *
 * @param treated totals of the treatment
 * @param control totals of the control
 */
export function scoreComparison(
  treated: Counted,
  control: Counted,
  { used, dfUsed }: { readonly used: number; readonly dfUsed: number },
): ScoreComparison {
  const behind = ({ count, seeds }: Counted) => ({ share: count / seeds, size: seeds / used });
  const statistic = pearsonTwoByTwo(treated, control) / used;
  return {
    estimate: 100 * (treated.count / treated.seeds - control.count / control.seeds),
    limits: (level) => percent(newcombeInterval(behind(treated), behind(control), tQuantile((1 + level) / 2, dfUsed))),
    statistic,
    p: fUpper(statistic, 1, dfUsed),
  };
}
