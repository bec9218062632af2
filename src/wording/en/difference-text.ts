import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/** "12 more per 100", "1.2 days earlier", "0 per 100". */
export function differenceText(amount: Amount, { unit, up, down, after }: DifferenceWords): string {
  if (amount.sign === 0) return `${inUnit('0', unit)}${after}`; // what was counted, which shows no sameness
  return `${inUnit(amountText(amount), unit)} ${amount.sign > 0 ? up : down}${after}`;
}
