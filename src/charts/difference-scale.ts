import type { Comparison, Range, Result } from '../analysis/analysis.ts';
import { niceScale, type Scale } from './nice-scale.ts';

/** An interval may reach this many times further than the typical one before it is cut off with an arrow. */
const FAR = 2.5;

interface Row {
  readonly result: Pick<Result, 'matters'>;
  readonly comparison: Pick<Comparison, 'estimate'> & { readonly interval: Range | null };
}

/**
 * The axis of differences: takes in zero, every difference and margin, and the intervals, except that one which reaches much further
 * than the others (two trays that happened to agree give such) does not press the others flat: it is cut off with an arrow.
 */
export function differenceScale(rows: readonly Row[]): Scale {
  const always = [0];
  const limits: number[] = [];
  const reaches: number[] = [];
  for (const { result, comparison } of rows) {
    const { estimate, interval } = comparison;
    if (estimate !== null) always.push(estimate);
    if (result.matters !== null) always.push(-result.matters, result.matters);
    if (interval?.lower == null || interval.upper == null) continue;
    limits.push(interval.lower, interval.upper);
    reaches.push(Math.max(Math.abs(interval.lower), Math.abs(interval.upper)));
  }
  const typical = reaches.sort((a, b) => a - b)[Math.floor((reaches.length - 1) / 2)] ?? 0;
  const most = Math.max(FAR * typical, 1.2 * Math.max(...always.map(Math.abs)));
  return niceScale([...always, ...limits.map((limit) => Math.max(-most, Math.min(most, limit)))]);
}
