/**
 * Digits after the point in which a value of an outcome is said. Percentages and points have one from 200
 * seeds on, or where no seed number is given as null; mm none; days and years one; other units three figures.
 */
export function quantityDigits(value: number, unit: string, seeds: number | null): number {
  if (unit === 'mm') return 0;
  if (unit === '%' || unit === 'points') return seeds !== null && seeds < 200 ? 0 : 1;
  if (unit === 'years' && Number.isInteger(value)) return 0; // times in storage as they were planned
  if (unit === 'days' || unit === 'years') return 1;
  const size = Math.abs(value);
  return size === 0 ? 0 : Math.min(4, Math.max(0, 2 - Math.floor(Math.log10(size))));
}
