import type { Amount } from '../amount.ts';
import { amountText } from './amount-text.ts';
import type { DifferenceWords } from './difference-words.ts';
import { inUnit } from './in-unit.ts';

/**
 * A range of differences in words, never with minus signs: "3 bis 21 mehr je 100", "9 weniger bis 17 mehr je
 * 100", "0 bis 17 mehr je 100". Smaller size first where both limits lie on one side.
 */
export function rangeText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  const { from, to } = rangeEnds(lower, upper, words);
  return from === null ? to : `${from} bis ${to}`;
}

/** "zu allem zwischen 3 und 21 mehr je 100", after "Die Daten passen". */
export function fitText(lower: Amount, upper: Amount, words: DifferenceWords): string {
  const { from, to } = rangeEnds(lower, upper, words);
  return from === null ? `zu ${to}` : `zu allem zwischen ${from} und ${to}`;
}

/** Both ends; `from` null where they read alike. */
function rangeEnds(lower: Amount, upper: Amount, words: DifferenceWords): { from: string | null; to: string } {
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
