import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/** Both ends of a range of differences, smaller size first where they lie on one side; `from` null where they read alike. */
export function rangeEnds(
  lower: Amount,
  upper: Amount,
  words: DifferenceWords,
): { readonly from: string | null; readonly to: string } {
  if (lower.sign === 0 && upper.sign === 0) return { from: null, to: `${inUnit('0', words.unit)} Unterschied` };
  if (lower.sign >= 0) return oneSide(lower, upper, words.up, words);
  if (upper.sign <= 0) return oneSide(upper, lower, words.down, words);
  return {
    from: `${inUnit(amountText(lower), words.unit)} ${words.down}`,
    to: `${inUnit(amountText(upper), words.unit)} ${words.up}${words.after}`,
  };
}

function oneSide(near: Amount, far: Amount, direction: string, { unit, after }: DifferenceWords) {
  const [from, to] = [amountText(near), amountText(far)];
  return { from: from === to ? null : from, to: `${inUnit(to, unit)} ${direction}${after}` };
}
