import type { Test } from '../../analysis/analysis.ts';

/** A test's method as statisticians know it. */
export const testName = (method: Test['method']): string => NAMES[method];

const NAMES: Readonly<Record<Test['method'], string>> = {
  'score-f': 'Score-Test, F mit Überstreuung φ*',
  'score-f-blocks': 'Score-Test über Blöcke, F mit Überstreuung φ*',
  'welch-t': 'Welch-t-Test',
  'paired-t': 'gepaarter t-Test über Blöcke',
  'pooled-t': 't-Test, zusammengefasst über Partien',
  'pooled-f': 'F-Test, zusammengefasst über Partien, Überstreuung φ*',
};
