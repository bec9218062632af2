import { number } from './number.ts';

/** p for tables: two figures, "unter 0,001" under that, and never 1,000 unless it is 1. */
export function pValue(p: number): string {
  if (p < 0.001) return 'unter 0,001';
  if (p > 0.995 && p < 1) return 'über 0,99';
  return number(p, p < 0.1 ? 3 : 2);
}
