import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/** "12 mehr je 100", "1,2 Tage früher", "0 je 100". */
export function differenceText(amount: Amount, { unit, up, down, after }: DifferenceWords): string {
  if (amount.sign === 0) return `${inUnit('0', unit)}${after}`; // was gezählt wurde, kein Gleichstand
  return `${inUnit(amountText(amount), unit)} ${amount.sign > 0 ? up : down}${after}`;
}
