import type { Range, Verdict } from '../analysis.ts';
import type { Context } from '../comparisons/context.ts';
import { judged, type Finding } from '../comparisons/judged.ts';

/** What the analysis makes of one comparison of a trial. */
export interface Found {
  /** Treatment minus control; null where there is none. */
  readonly estimate: number | null;
  readonly interval: Range | null;
  /** Two-sided; null where nothing could be tested. */
  readonly p: number | null;
  readonly verdict: Verdict;
}

/** A finding with the verdict that the analysis gives it (methods 7). */
export function found(estimate: number | null, finding: Finding, p: number | null, context: Context): Found {
  return { estimate, interval: finding.interval, p, verdict: judged(finding, context).verdict };
}
