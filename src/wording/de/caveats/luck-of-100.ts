import { amount } from '../../amount.ts';
import { number } from '../number.ts';

/** A chance as so many of 100: "12", "weniger als 1". */
export function luckOf100(chance: number): string {
  const { near, size } = amount(chance * 100, 0);
  return near === 'less-than' ? 'weniger als 1' : number(size);
}
