import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';

/** A measurement as typed, with a decimal point or comma; null: nothing measured. Undefined: no number that can be kept. */
export function typedValue(text: string): number | null | undefined {
  const plain = plainText(text);
  if (isMissing(plain)) return null;
  return /^-?\d{1,9}([.,]\d{1,6})?$/.test(plain) ? Number(plain.replace(',', '.')) + 0 : undefined;
}
