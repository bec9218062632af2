import type { Amount } from './amount.ts';

/** Digits after the point in which an amount is printed: those of its sentence; a margin keeps its own. */
export function amountDigits({ size, digits, near }: Amount): number {
  if (near === 'less-than') return digits;
  if (size === 0) return 0;
  return near !== 'exact' || size !== Number(size.toFixed(digits)) ? ownDigits(size) : digits;
}

/** Digits after the point that a number was written with, at most six. */
const ownDigits = (size: number) => (String(Number(size.toFixed(6))).split('.')[1] ?? '').length;
