import { rounded } from '../wording/rounded.ts';
import type { Result } from '../analysis/analysis.ts';
import type { Words } from '../wording/words.ts';

/** A share of 100 in whole numbers, as sentences have it, yet never 0 or 100 where it is not quite none or all. */
export function roundedShare(share: number): { readonly value: number; readonly digits: 0 | 1 } {
  const whole = rounded(share);
  const closed = (whole === 0 || whole === 100) && whole !== share;
  return closed ? { value: Math.max(0.1, Math.min(99.9, share)), digits: 1 } : { value: whole, digits: 0 };
}

/** A value of a unit or a group as written beside its mark. */
export function valueText(value: number | null, { measure, unit }: Result, words: Words): string {
  if ((measure !== 'germination' && measure !== 'storage') || value === null) return words.quantity(value, unit);
  const shown = roundedShare(value);
  const seeds = shown.digits === 0 ? 0 : 200; // percentages have a digit after the point from 200 seeds on
  return words.quantity(shown.value, unit, seeds);
}
