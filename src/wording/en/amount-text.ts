import type { Amount } from '../amount.ts';
import { number } from './number.ts';

/** An amount without its direction: "12", "1.2", "less than 1", "just over 10". */
export function amountText({ size, digits, near }: Amount): string {
  if (near === 'exact') return number(size, size === Number(size.toFixed(digits)) ? digits : undefined);
  return `${NEAR[near]} ${number(size)}`;
}

const NEAR = { 'just-over': 'just over', 'just-under': 'just under', 'less-than': 'less than' } as const;
