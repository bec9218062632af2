import type { Amount } from '../amount.ts';
import { number } from './number.ts';

/** An amount without its direction: "12", "1.2", "less than 1", "just over 10". A margin keeps its own digits. */
export function amountText({ size, digits, near }: Amount): string {
  if (near === 'less-than') return `less than ${number(size)}`;
  const shown = size === 0 || size !== Number(size.toFixed(digits)) ? number(size) : number(size, digits);
  return near === 'exact' ? shown : `${near === 'just-over' ? 'just over' : 'just under'} ${shown}`;
}
