import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/** Storage time in years, said in months below two years where it comes out whole: "6 months", "1 year", "2.5 years". */
export function storedText(years: number): string {
  const months = years * 12;
  if (years < 2 && years !== 1 && Math.abs(months - Math.round(months)) < 0.1) {
    const whole = Math.round(months);
    if (whole === 12) return '1 year';
    return `${number(whole)} ${whole === 1 ? 'month' : 'months'}`;
  }
  return inUnit(number(Number(years.toFixed(1))), ' years');
}
