import type { Amount } from '../amount.ts';
import { number } from './number.ts';

/** An amount without its direction: "12", "1.2", "less than 1", "just over 10". A margin keeps its own digits. */
export function amountText({ size, digits, near }: Amount): string {
  if (near === 'less-than') return `less than ${number(size, digits)}`;
  const isMargin = near !== 'exact' || size !== Number(size.toFixed(digits));
  const shown = number(size, size === 0 ? 0 : isMargin ? ownDigits(size) : digits);
  return near === 'exact' ? shown : `${near === 'just-over' ? 'just over' : 'just under'} ${shown}`;
}

/** Digits after the point that a number was written with, at most six. */
const ownDigits = (size: number) => (String(Number(size.toFixed(6))).split('.')[1] ?? '').length;
