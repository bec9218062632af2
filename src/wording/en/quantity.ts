import { quantityDigits } from '../quantity-digits.ts';
import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/**
 * A value of an outcome with its unit: "76 %", "5.4 days", "42 mm".
 *
 * @param digits digits after the point where the sentence knows better
 */
export function quantity(value: number | null, unit: string, seeds?: number | null, digits?: number): string {
  if (value === null) return 'not known';
  const shown = unit === 'percentage points' ? 'points' : unit.startsWith('% ') ? '%' : unit;
  const text = number(value, digits ?? quantityDigits(value, shown, seeds ?? null));
  return inUnit(text, shown === '' ? '' : ` ${shown}`);
}
