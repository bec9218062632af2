import type { IntervalMethod } from '../../analysis/analysis.ts';

/** An interval's method as statisticians know it. */
export const intervalName = (method: IntervalMethod): string => NAMES[method];

const NAMES: Readonly<Record<IntervalMethod, string>> = {
  'wilson-effective': 'Wilson score, effective seed numbers, t quantile',
  'wilson-seeds-only': 'Wilson score, seed luck only (one unit)',
  'newcombe-effective': 'Newcombe hybrid score, effective seed numbers, t quantile',
  'newcombe-seeds-only': 'Newcombe hybrid score, seed luck only (one unit)',
  'newcombe-blocks': 'Newcombe hybrid score over blocks',
  'mantel-haenszel': 'Mantel–Haenszel risk difference over lots',
  welch: 'Welch t',
  'welch-bracket': 'hull of Welch t and what the check days allow',
  paired: 'paired t over blocks',
  'pooled-means': 't over lots, spread pooled within lot and treatment',
  fieller: 'Fieller',
};
