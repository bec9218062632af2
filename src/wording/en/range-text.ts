import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/**
 * A range of differences in words, never with minus signs: "3 to 21 more per 100", "17 to 35 fewer per 100",
 * "9 fewer to 17 more per 100", "0 to 17 more per 100". Smaller size first where both limits lie on one side.
 */
export function rangeText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  if (lower.sign === 0 && upper.sign === 0) return 'no difference at all';
  if (lower.sign >= 0) return oneSide(lower, upper, words.up, words);
  if (upper.sign <= 0) return oneSide(upper, lower, words.down, words);
  const fewer = `${inUnit(amountText(lower), words.unit)} ${words.down}`;
  return `${fewer} to ${inUnit(amountText(upper), words.unit)} ${words.up}${words.after}`;
}

function oneSide(near: Amount, far: Amount, direction: string, { unit, after }: DifferenceWords): string {
  const [from, to] = [amountText(near), amountText(far)];
  return `${from === to ? '' : `${from} to `}${inUnit(to, unit)} ${direction}${after}`;
}
