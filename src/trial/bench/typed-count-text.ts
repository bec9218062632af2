import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import type { TypedCount } from './typed-count.ts';

const LARGEST = 1_000_000;

/** A count as typed: digits, NC (or another sign for "no value"), or nothing. Undefined: none of these. */
export function typedCountText(text: string): TypedCount | undefined {
  const plain = plainText(text);
  if (plain === '') return null;
  if (isMissing(plain)) return 'NC';
  return /^\d{1,7}$/.test(plain) && Number(plain) <= LARGEST ? Number(plain) : undefined;
}
