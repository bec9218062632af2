import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/**
 * A value of an outcome with its unit: "76 %", "5.4 days", "42 mm". Percentages have one digit after the
 * point from 200 seeds on, or where no seed number is given as null; mm none; other units three figures.
 *
 * @param digits digits after the point where the sentence knows better
 */
export function quantity(value: number | null, unit: string, seeds?: number | null, digits?: number): string {
  if (value === null) return 'not known';
  const shown = unit === 'percentage points' ? 'points' : unit.startsWith('% ') ? '%' : unit;
  const text = number(value, digits ?? digitsOf(value, shown, seeds ?? null));
  return inUnit(text, shown === '' ? '' : ` ${shown}`);
}

function digitsOf(value: number, unit: string, seeds: number | null): number {
  if (unit === 'mm') return 0;
  if (unit === '%' || unit === 'points') return seeds !== null && seeds < 200 ? 0 : 1;
  if (unit === 'days' || unit === 'years') return 1;
  const size = Math.abs(value);
  return size === 0 ? 0 : Math.min(4, Math.max(0, 2 - Math.floor(Math.log10(size))));
}
