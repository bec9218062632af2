import type { CaveatId } from '../analysis/analysis.ts';
import type { Pooled, PooledTrial } from '../analysis/pooled.ts';
import { amount, type Amount } from './amount.ts';
import { digitsFor } from './digits-for.ts';

export type PooledCase = 'none' | 'one' | 'side-by-side' | 'matters' | 'different' | 'unclear' | 'cause-unclear';

/** Both ends of a range, ready to be said. */
export interface Ends {
  readonly lower: Amount;
  readonly upper: Amount;
}

/** What the sentences about a pooled question are made from, the same in every language. */
export interface PooledFacts {
  readonly case: PooledCase;
  readonly probably: boolean;
  readonly trials: number;
  /** Every trial is of another grower. */
  readonly growersDiffer: boolean;
  readonly estimate: Amount | null;
  readonly interval: Ends | null;
  /** Smallest and largest difference that a trial found. */
  readonly results: Ends | null;
  readonly prediction: Ends | null;
  readonly nextResult: Ends | null;
  /** How trials differ: no more than their own luck, more but luck could do it, clearly more. */
  readonly between: 'none' | 'some' | 'clear' | null;
  readonly oneTray: number;
  readonly elsewhere: number;
  readonly doubtful: number;
  readonly doubts: readonly { readonly id: CaveatId; readonly trials: number }[];
  /** Trials without which it would turn whether the interval takes in zero; null where that was not tried. */
  readonly turning: readonly PooledTrial[] | null;
  readonly firstLotOnly: number;
  readonly crops: readonly string[];
  readonly days: readonly number[];
}

/** Q with a p below this is called clear: the power of Q is low with few trials (Higgins & Thompson 2002). */
const CLEAR = 0.1;

export function pooledFacts(pooled: Pooled): PooledFacts {
  const { trials, verdict, ceiling, estimate, interval, tau2, q } = pooled;
  const told = (value: number, margin: number | null = null) =>
    amount(within(pooled, value), digitsFor(pooled.measure, pooled.valueUnit, spanOf(pooled)), margin);
  const ends = (range: Pooled['prediction'], margin: number | null = null): Ends | null =>
    range?.lower == null || range.upper === null
      ? null
      : { lower: told(range.lower, margin), upper: told(range.upper, margin) };
  const found = trials.map((trial) => trial.estimate);
  const claims = verdict === 'matters' || verdict === 'different';
  const distinct = <T>(values: readonly T[]) => [...new Set(values)];
  return {
    case:
      verdict === 'not-pooled'
        ? fewCase(trials.length)
        : claims && ceiling === 'cause-unclear'
          ? 'cause-unclear'
          : verdict,
    probably: ceiling === 'probably',
    trials: trials.length,
    growersDiffer: distinct(trials.map(({ growers }) => growers.join('; '))).length === trials.length,
    estimate: estimate === null ? null : told(estimate, pooled.matters),
    interval: ends(interval, pooled.matters),
    results: found.length === 0 ? null : ends({ lower: Math.min(...found), upper: Math.max(...found) }),
    prediction: ends(pooled.prediction),
    nextResult: ends(pooled.nextResult),
    between: tau2 === null || q === null ? null : tau2 === 0 ? 'none' : q.p < CLEAR ? 'clear' : 'some',
    oneTray: trials.filter(({ basis }) => basis === 'half-seeds').length,
    elsewhere: trials.filter((trial) => trial.elsewhere).length,
    doubtful: trials.filter(({ doubtful }) => doubtful !== null).length,
    doubts: distinct(trials.flatMap(({ doubts }) => doubts))
      .map((id) => ({ id, trials: trials.filter(({ doubts }) => doubts.includes(id)).length }))
      .toSorted((a, b) => b.trials - a.trials || (a.id < b.id ? -1 : 1)),
    turning: turningOf(pooled),
    firstLotOnly: trials.filter((trial) => trial.firstLotOnly).length,
    crops: distinct(trials.flatMap(({ crops }) => crops)),
    days: distinct(trials.flatMap(({ day }) => day ?? [])).toSorted((a, b) => a - b),
  };
}

const fewCase = (trials: number): PooledCase => (trials === 0 ? 'none' : trials === 1 ? 'one' : 'side-by-side');

/** No difference is beyond 100 per 100, whatever a symmetric range reaches to. */
const within = ({ measure }: Pooled, value: number): number =>
  measure === 'germination' ? Math.max(-100, Math.min(100, value)) : value;

function spanOf({ interval, trials }: Pooled): number | null {
  const { lower, upper } = interval ?? trials[0] ?? { lower: null, upper: null };
  return lower === null || upper === null ? null : upper - lower;
}

function turningOf({ trials, interval, leaveOneOut }: Pooled): readonly PooledTrial[] | null {
  if (interval?.lower == null || interval.upper === null || leaveOneOut.length === 0) return null;
  const takesInZero = (lower: number, upper: number) => lower <= 0 && upper >= 0;
  const whole = takesInZero(interval.lower, interval.upper);
  return trials.filter((_, index) => {
    const { lower, upper } = leaveOneOut[index] ?? { lower: null, upper: null };
    return lower !== null && upper !== null && takesInZero(lower, upper) !== whole;
  });
}
