import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';

/** "12 more per 100", "1.2 days earlier", "no difference". */
export function differenceText(amount: Amount, words: DifferenceWords): string {
  if (amount.sign === 0) return 'no difference';
  return `${amountText(amount)}${words.unit} ${amount.sign > 0 ? words.up : words.down}${words.after}`;
}
