import type { Difference } from './differences.ts';
import { niceScale, type Scale } from './nice-scale.ts';

/** An interval may reach this many times further than the typical one before it is cut off with an arrow. */
const FAR = 2.5;

/**
 * The axis of differences: takes in zero, every difference and margin, and the intervals, except that one which reaches much further
 * than the others (two trays that happened to agree give such) does not press the others flat: it is cut off with an arrow.
 */
export function differenceScale(rows: readonly Difference[]): Scale {
  const always = [0];
  const reaches: number[] = [];
  for (const { result, comparison } of rows) {
    const { estimate, interval, equivalence } = comparison;
    const margin = equivalence?.margin ?? result.matters;
    if (estimate !== null) always.push(estimate);
    if (margin !== null) always.push(-margin, margin);
    for (const limit of [interval?.lower, interval?.upper])
      if (limit !== null && limit !== undefined) reaches.push(limit);
  }
  const sizes = reaches.map(Math.abs).sort((a, b) => a - b);
  const most = Math.max(FAR * (sizes[Math.floor(sizes.length / 2)] ?? 0), 1.2 * Math.max(...always.map(Math.abs)));
  return niceScale([...always, ...reaches.map((limit) => Math.max(-most, Math.min(most, limit)))]);
}
