import type { Comparison, Interval, Range } from '../analysis.ts';
import { verdictOf } from '../verdict/verdict-of.ts';
import type { Context } from './context.ts';

/** What the verdict needs beside the margin. */
export interface Finding {
  readonly replicated: boolean;
  readonly units: number;
  readonly germinated: number | null;
  readonly interval: Interval | null;
  readonly ninety: Range | null;
  /** Where it differs from `interval`: Welch's own, with coarse checks. */
  readonly own?: Range | null;
  readonly neverSame?: boolean;
}

/**
 * Verdict and equivalence of a comparison. Equivalence is reported wherever a margin exists, with or
 * without an interval to hold against it.
 */
export function judged(finding: Finding, context: Context): Pick<Comparison, 'verdict' | 'equivalence'> {
  const { interval, ninety, own = interval, neverSame = false } = finding;
  const margin = context.outcome.matters;
  const { verdict, shown } = verdictOf({ ...finding, margin, marginFixed: context.marginFixed, own, neverSame });
  const equivalence =
    margin === null
      ? null
      : {
          margin,
          fixedBeforehand: context.marginFixed,
          interval: { level: 0.9, lower: ninety?.lower ?? null, upper: ninety?.upper ?? null },
          shown,
        };
  return { verdict, equivalence };
}
