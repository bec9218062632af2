import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/** Storage time in years, said in months below two years where it comes out whole: "6 Monate", "1 Jahr", "2,5 Jahre". */
export function storedText(years: number, form: 'plain' | 'dative' = 'plain'): string {
  const months = years * 12;
  if (years < 2 && years !== 1 && Math.abs(months - Math.round(months)) < 0.1) {
    const whole = Math.round(months);
    return whole === 12 ? inUnit('1', 'years', form) : inUnit(number(whole), 'months', form);
  }
  return inUnit(number(Number(years.toFixed(1))), 'years', form);
}
