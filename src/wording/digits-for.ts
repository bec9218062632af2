import type { Measure } from '../trial/trial.ts';

/**
 * Digits after the point in which a difference and its interval are said: whole points per 100, whole
 * mm, one digit for days and moisture; other units so that a step is at most a tenth of the interval's
 * width (or of the difference, where there is no interval).
 *
 * @param span width of the interval, or size of the difference, in the same unit; null where neither is known
 */
export function digitsFor(measure: Measure, unit: string, span: number | null): number {
  if (measure === 'germination' || measure === 'storage' || unit === 'mm') return 0;
  if (measure !== 'trait') return 1;
  if (span === null || !(span > 0)) return 1;
  return Math.min(4, Math.max(0, Math.ceil(-Math.log10(span / 10) - 1e-9)));
}
