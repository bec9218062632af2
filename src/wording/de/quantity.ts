import { quantityDigits } from '../quantity-digits.ts';
import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/**
 * A value of an outcome with its unit: "76 %", "5,4 Tage", "42 mm".
 *
 * @param digits digits after the comma where the sentence knows better
 * @param form   "dative" after von, innerhalb von, nach: "5,4 Tagen"
 */
export function quantity(
  value: number | null,
  unit: string,
  seeds?: number | null,
  digits?: number,
  form: 'plain' | 'dative' = 'plain',
): string {
  if (value === null) return 'nicht bekannt';
  const shown = unit === 'percentage points' ? 'points' : unit.startsWith('% ') ? '%' : unit;
  return inUnit(number(value, digits ?? quantityDigits(value, shown, seeds ?? null)), shown, form);
}
