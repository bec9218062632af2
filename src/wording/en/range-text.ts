import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';

/**
 * A range of differences in words, never with minus signs: "3 to 21 more per 100", "17 to 35 fewer per 100",
 * "9 fewer to 17 more per 100", "0 to 17 more per 100". Smaller size first where both limits lie on one side.
 */
export function rangeText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  const end = `${words.unit} `;
  if (lower.sign >= 0 && upper.sign > 0) return `${amountText(lower)} to ${amountText(upper)}${end}${words.up}${words.after}`;
  if (upper.sign <= 0 && lower.sign < 0) {
    return `${amountText(upper)} to ${amountText(lower)}${end}${words.down}${words.after}`;
  }
  if (lower.sign === 0) return 'no difference at all';
  return `${amountText(lower)}${words.unit} ${words.down} to ${amountText(upper)}${end}${words.up}${words.after}`;
}
