import { storageTime } from '../storage-time.ts';
import { inUnit } from './in-unit.ts';
import { number } from './number.ts';

/** A time in storage in the unit that fits the longest time tested: "3.2 years", "8.4 months" (in the dative). */
export function duration(years: number, last: number): string {
  const { perYear, unit, digits } = storageTime(last);
  return inUnit(number(years * perYear, digits), unit, 'dative');
}
