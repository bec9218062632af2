import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/** "12 more per 100", "1.2 days earlier", "no difference". */
export function differenceText(amount: Amount, { unit, up, down, after }: DifferenceWords): string {
  if (amount.sign === 0) return 'no difference';
  return `${inUnit(amountText(amount), unit)} ${amount.sign > 0 ? up : down}${after}`;
}
