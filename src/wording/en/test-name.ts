import type { Test } from '../../analysis/analysis.ts';

/** A test's method as statisticians know it. */
export const testName = (method: Test['method']): string => NAMES[method];

const NAMES: Readonly<Record<Test['method'], string>> = {
  'score-f': 'score test, F with dispersion φ*',
  'score-f-blocks': 'score test over blocks, F with dispersion φ*',
  'welch-t': 'Welch t test',
  'paired-t': 'paired t test over blocks',
  'pooled-t': 't test pooled over lots',
  'pooled-f': 'F test pooled over lots, dispersion φ*',
};
